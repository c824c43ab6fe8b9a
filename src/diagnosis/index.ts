export * from './hypotheses.ts';
export * from './tests.ts';
export * from './nuisances.ts';
export * from './read-subject.ts';
export * from './table.ts';
export * from './table-code.ts';
export * from './cells.ts';
export {
  bothChances,
  CODE_SETS,
  codesOf,
  outcomeChances,
  outcomeChancesOf,
  signsFrom,
  type CodeSigns,
} from './outcome-tables.ts';
export * from './posterior.ts';
export * from './findings.ts';
export * from './car-state.ts';
export * from './next-test.ts';
export * from './request.ts';
export * from './planner.ts';
export * from './leak.ts';
export * from './grounds.ts';
export * from './plausible.ts';
export * from './contradictions.ts';
export * from './plain-clash.ts';
export * from './two-faults.ts';
export * from './steps.ts';
export * from './way.ts';
export * from './cars.ts';
