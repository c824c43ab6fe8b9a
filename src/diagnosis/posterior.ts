/**
 * What the readings say, by Bayes' rule: each hypothesis carries a weight and what the readings have told about the ways in
 * which this car differs from the model, a Kalman filter of thirteen (specification of the planner, section 5).
 */
import { ANY_VALUE, BROKEN, CLASSES, usualWeight, type Name, NAMES } from './hypotheses.ts';
import { expectedIn, healthyIn, type Expected, type Hypothesis } from './cells.ts';
import { normalBelow, normalDensity } from './normal.ts';
import { bothChances, CODE_SETS, outcomeChances, outcomesOf } from './outcome-tables.ts';
import { SHARED } from './table.ts';
import {
  CODES,
  columnOf,
  isNumeric,
  LONGEST_STOP,
  onScale,
  OUTCOMES,
  WARMTHS,
  type NumericTest,
  type OutcomeTest,
  type Test,
} from './tests.ts';
import { NUISANCES, sdOf } from './nuisances.ts';

/** A reading: a number in the shop's unit (null: the turbine did not stop), an outcome, or the codes stored. */
export interface TakenReading {
  readonly test: Test;
  readonly value: number | null | string | readonly string[];
  /** Where the fluid was not at the nominal temperature [°C]. */
  readonly temperatureC?: number;
}

/** With what chance a reading is a gross error. */
export const GROSS = 0.003;
const MOST_OFF = 25;

/** One hypothesis as the readings have left it. */
export interface Weighed {
  readonly hypothesis: Hypothesis;
  /** Logarithm of its weight. */
  log: number;
  readonly z: Float64Array;
  /** SHARED by SHARED, row by row. */
  readonly P: Float64Array;
  /** Sum of squared distances of the numeric readings, each capped. */
  off: number;
  /** For `unlisted`: which of BROKEN it began with, and the chance of each group now. */
  readonly broken?: { readonly from: number; readonly groups: Map<string, number> };
}

export interface Posterior {
  readonly cells: readonly Weighed[];
  /** Share of each cell; sums to 1. */
  readonly shares: Float64Array;
  /** How many readings in numbers there were. */
  readonly numbers: number;
  /** Ids of the tests that were taken: the same again tells little, and is not proposed. */
  readonly taken: readonly string[];
}

export const unit = (): Float64Array => {
  const P = new Float64Array(SHARED * SHARED);
  for (let i = 0; i < SHARED; i += 1) P[i * SHARED + i] = 1;
  return P;
};

/** The cells before any reading. Weights by name; a name left out keeps its own. */
export function prior(
  hypotheses: readonly Hypothesis[],
  weights: Readonly<Partial<Record<Name, number>>> = {},
): Weighed[] {
  const healthy = healthyIn(hypotheses);
  const weightOf = (name: Name): number => weights[name] ?? usualWeight(name);
  const all = NAMES.reduce((sum, name) => sum + weightOf(name), 0);
  const inClass = new Map<number, number>();
  for (const { index } of hypotheses) inClass.set(index, (inClass.get(index) ?? 0) + 1);
  const classesOf = (name: Name): number => CLASSES.filter((of) => of.name === name).length;
  const listed = hypotheses.map((hypothesis): Weighed => {
    const { name } = hypothesis.of;
    const share = weightOf(name) / all / classesOf(name) / (inClass.get(hypothesis.index) ?? 1);
    return { hypothesis, log: Math.log(share), z: new Float64Array(SHARED), P: unit(), off: 0 };
  });
  const index = CLASSES.findIndex(({ name }) => name === 'unlisted');
  const unlisted = BROKEN.map((from): Weighed => ({
    hypothesis: { ...healthy, of: { name: 'unlisted' }, index },
    log: Math.log(weightOf('unlisted') / all / BROKEN.length),
    z: new Float64Array(SHARED),
    P: unit(),
    off: 0,
    broken: { from, groups: new Map() },
  }));
  return [...listed, ...unlisted];
}

/** Mean and variance alone, where nothing is taken: two thirds of the moves are zero. */
export function forecast({ z, P }: Pick<Weighed, 'z' | 'P'>, { mean, moves, own }: Expected) {
  let mu = mean;
  let S = own;
  for (let i = 0; i < SHARED; i += 1) {
    const move = moves[i] ?? 0;
    if (move === 0) continue;
    mu += move * (z[i] ?? 0);
    for (let k = 0; k < SHARED; k += 1) {
      const other = moves[k] ?? 0;
      if (other !== 0) S += move * other * (P[i * SHARED + k] ?? 0);
    }
  }
  return { mu, S };
}

/** Of the cell that was looked at last: a page has better things to do than to clear away one for each. */
const PJ = new Float64Array(SHARED);

/** How a reading stands with a cell: its mean and variance, and P J'. */
function predicted({ z, P }: Pick<Weighed, 'z' | 'P'>, { mean, moves, own }: Expected) {
  let mu = mean;
  let S = own;
  PJ.fill(0);
  for (let i = 0; i < SHARED; i += 1) {
    const move = moves[i] ?? 0;
    if (move === 0) continue;
    mu += move * (z[i] ?? 0);
    for (let k = 0; k < SHARED; k += 1) {
      PJ[k] = (PJ[k] ?? 0) + (P[k * SHARED + i] ?? 0) * move;
    }
  }
  for (let i = 0; i < SHARED; i += 1) S += (moves[i] ?? 0) * (PJ[i] ?? 0);
  return { mu, S };
}

/** Density of "any value" on the solver's scale: a stopped clock is a part of it for stop times. */
export function anyDensity({ kind, span }: NumericTest, unlisted: boolean): number {
  const width = span[1] - span[0];
  if (kind !== 'stopTime') return 1 / width;
  return (unlisted ? 0.5 : 0.7) / width;
}
/** Chance of "did not stop" when any value may come. */
const anyNever = (unlisted: boolean): number => (unlisted ? 0.5 : 0.3);

/** What is expected of a reading at its own temperature. */
export function expectedAt(expected: Expected, { test, temperatureC }: TakenReading): Expected {
  const { warmth } = test.at;
  if (temperatureC === undefined || warmth === undefined) return expected;
  const off = temperatureC - WARMTHS[warmth].at;
  // Of the differences that cars share one is how warm the fluid truly is.
  const move = NUISANCES.reduce(
    (sum, one, i) =>
      one.warmth === warmth ? sum + (expected.moves[i] ?? 0) / sdOf(one.half) : sum,
    0,
  );
  return { ...expected, mean: expected.mean + move * off };
}

/** Whether the clock was stopped before the turbine was. */
export const neverStopped = ({ test, value }: TakenReading): boolean =>
  test.kind === 'stopTime' && (value === null || (value as number) > LONGEST_STOP);

/** A reading in numbers on a cell: where it lies, what is expected there, and how likely it is. */
function likelyNumber(cell: Weighed, reading: TakenReading, test: NumericTest) {
  const one = expectedIn(cell.hypothesis, columnOf(test.id));
  const { mu, S } = predicted(cell, expectedAt(one, reading));
  const { broken } = cell;
  const chance = broken ? (broken.groups.get(test.group) ?? broken.from) : 0;
  const eps = broken ? ANY_VALUE * chance : GROSS;
  const never = neverStopped(reading);
  const y = never ? LONGEST_STOP : onScale(test, reading.value as number);
  const N = never ? normalBelow((mu - LONGEST_STOP) / Math.sqrt(S)) : normalDensity(y, mu, S);
  const U = never ? anyNever(broken !== undefined) : anyDensity(test, broken !== undefined);
  return { mu, S, chance, eps, never, y, N, U, likely: (1 - eps) * N + eps * U };
}

function takeNumber(cell: Weighed, reading: TakenReading, test: NumericTest): void {
  const { mu, S, chance, eps, never, y, N, U, likely } = likelyNumber(cell, reading, test);
  const { broken } = cell;
  cell.log += Math.log(likely);
  if (broken) {
    const asAny = chance * ((1 - ANY_VALUE) * N + ANY_VALUE * U);
    broken.groups.set(test.group, asAny / (asAny + (1 - chance) * N));
  }
  if (never) return;
  cell.off += Math.min(MOST_OFF, (y - mu) ** 2 / S);
  const taken = ((1 - eps) * N) / likely;
  for (let i = 0; i < SHARED; i += 1) {
    const gain = (taken * (PJ[i] ?? 0)) / S;
    if (gain === 0) continue;
    cell.z[i] = (cell.z[i] ?? 0) + gain * (y - mu);
    for (let k = 0; k < SHARED; k += 1) {
      const at = i * SHARED + k;
      cell.P[at] = (cell.P[at] ?? 0) - gain * (PJ[k] ?? 0);
    }
  }
}

/** Chance of each outcome of a test in words for a cell. */
export function chancesFor(
  cell: Pick<Weighed, 'hypothesis' | 'broken'>,
  test: OutcomeTest,
): readonly number[] {
  const { of, severity, signs, second } = cell.hypothesis;
  if (!cell.broken) {
    const first = outcomeChances(test, of, severity, signs);
    return second === undefined || test.kind === 'codes'
      ? first
      : bothChances(first, outcomeChances(test, second.of, second.severity, signs));
  }
  const r = test.kind === 'codes' ? cell.broken.from : cell.broken.from / 3;
  const n = outcomesOf(test);
  return outcomeChances(test, { name: 'healthy' }, 1, signs).map((p) => (1 - r) * p + r / n);
}

/** Place of what was seen among the outcomes of its test. */
export function outcomeIndex({ test, value }: TakenReading): number {
  const { kind } = test as OutcomeTest;
  if (kind !== 'codes') return (OUTCOMES[kind] as readonly string[]).indexOf(value as string);
  const codes = value as readonly string[];
  return CODE_SETS.findIndex((set) => set.every((is, i) => is === codes.includes(CODES[i] ?? '')));
}

/** How likely a reading is on a cell as the readings before it have left that. */
export const likelihoodOn = (cell: Weighed, reading: TakenReading): number =>
  isNumeric(reading.test)
    ? likelyNumber(cell, reading, reading.test).likely
    : (chancesFor(cell, reading.test)[outcomeIndex(reading)] ?? 0);

/** Takes one more reading into cells. */
export function take(cells: readonly Weighed[], reading: TakenReading): void {
  const { test } = reading;
  for (const cell of cells) {
    if (cell.log === -Infinity) continue;
    if (isNumeric(test)) takeNumber(cell, reading, test);
    else cell.log += Math.log(likelihoodOn(cell, reading));
  }
}

/** Share of each cell; sums to 1. */
export function sharesOf(cells: readonly Weighed[]): Float64Array {
  const most = Math.max(...cells.map(({ log }) => log));
  const shares = Float64Array.from(cells, ({ log }) => Math.exp(log - most));
  const sum = shares.reduce((all, one) => all + one, 0);
  return shares.map((share) => share / sum);
}

/** Weighs readings, in their order. */
export function weigh(
  hypotheses: readonly Hypothesis[],
  readings: readonly TakenReading[],
  weights?: Readonly<Partial<Record<Name, number>>>,
): Posterior {
  const cells = prior(hypotheses, weights);
  for (const reading of readings) take(cells, reading);
  return posteriorOf(cells, readings);
}

/** What the cells say once they have taken the readings. */
export function posteriorOf(
  cells: readonly Weighed[],
  readings: readonly TakenReading[],
): Posterior {
  return {
    cells,
    shares: sharesOf(cells),
    numbers: readings.filter((reading) => isNumeric(reading.test) && !neverStopped(reading)).length,
    taken: readings.map(({ test }) => test.id),
  };
}
