/**
 * The car of a practice case: what each test reads on it. Numbers come from the engine, with the error of a shop's reading,
 * the same for everybody; what one sees is the likeliest outcome that is not "as it should be", where there is one.
 */
import { applyFaults, type FaultSet, type Plant } from '../engine/index.ts';
import {
  chanceFrom,
  errorOf,
  isNumeric,
  nominalReader,
  OUTCOMES,
  offScale,
  TESTS,
  written,
  codesOf,
  outcomeChancesOf,
  type FaultClass,
  type NumericTest,
  type OutcomeTest,
  type TakenReading,
  type Test,
} from '../diagnosis/index.ts';
import type { PracticeCase } from './case-schema.ts';
import { seedOf } from './seed-of.ts';

/** From this chance on an outcome is what one sees. */
const SEEN = 0.4;

/** The test that a reading made by hand belongs to; throws where there is none. */
export function testByHand(one: NonNullable<PracticeCase['byHand']>[number]): Test {
  const found = TESTS.find(
    ({ kind, at }) =>
      kind === one.test &&
      at.range === one.range &&
      at.circuit === one.circuit &&
      at.rpm === one.engine_rpm &&
      at.warmth === one.temperature,
  );
  if (found === undefined) throw new Error(`There is no test ${JSON.stringify(one)}.`);
  return found;
}

/** What every test reads on the car of a case. */
export function carOfCase(
  plant: Plant,
  id: string,
  given: PracticeCase,
): (test: Test) => TakenReading {
  const faults = given.faults as FaultSet;
  const exact = nominalReader(applyFaults(plant, faults));
  const classes: readonly (readonly [FaultClass, number])[] = Object.entries(faults).flatMap(
    ([name, setting]) =>
      setting === undefined
        ? []
        : [
            [
              {
                name: name as FaultClass['name'],
                ...(setting.circuit !== undefined && { circuit: setting.circuit }),
              },
              setting.severity,
            ] as const,
          ],
  );
  const hand = new Map(
    (given.byHand ?? []).map((one) => [testByHand(one).id, one.value as TakenReading['value']]),
  );
  const number = (test: NumericTest): TakenReading['value'] => {
    const chance = chanceFrom(seedOf(`${id} ${test.id}`));
    const value = exact(test.id);
    // Within one error either way: nobody is taught by a gross one.
    const read = offScale(test, value + errorOf(test, value) * (2 * chance() - 1));
    return written(test, read);
  };
  const seen = (test: OutcomeTest): TakenReading['value'] => {
    if (test.kind === 'codes') return codesOf(classes, exact);
    const usual = OUTCOMES[test.kind];
    for (const [of, severity] of classes) {
      const chances = outcomeChancesOf(test, of, severity);
      const place = chances.findIndex((p, i) => i > 0 && p >= SEEN);
      if (place > 0) return usual[place] ?? usual[0];
    }
    return usual[0];
  };
  return (test) => {
    const byHand = hand.get(test.id);
    if (byHand !== undefined) return { test, value: byHand };
    return { test, value: isNumeric(test) ? number(test) : seen(test) };
  };
}
