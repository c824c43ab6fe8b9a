/**
 * Readings that cannot both be right on one car: each can be had alone, and no fault of the list, nor two of them together,
 * gives the two at once. A reading that was mistyped, taken on another range or copied from another car shows so long before
 * the whole sheet does.
 */
import { healthyIn, type Hypothesis } from './cells.ts';
import { aloneOn } from './grounds.ts';
import { inOneGo } from './in-one-go.ts';
import { normalBelow, normalDensity } from './normal.ts';

import { chancesFor, neverStopped, outcomeIndex, type TakenReading } from './posterior.ts';
import { SHARED } from './table.ts';
import { isNumeric, LONGEST_STOP, onScale } from './tests.ts';
import { bothMean, shrinks } from './two-faults.ts';

export interface Contradiction {
  /** Places of the two among the readings. */
  readonly first: number;
  readonly second: number;
  /** The largest joint likelihood as a share of the product of the largest single ones. */
  readonly share: number;
}

/**
 * Under this share the two are named. `node src/bench/contradictions.ts` with 3000 cars of seed 7 and 2000 of seed 8: none
 * of the 5000 that were read honestly is accused, nor any of the 2000 of seed 8 with two faults.
 */
export const NEGLIGIBLE_SHARE = 1e-3;

/** A reading on one hypothesis: a number with its law, or the chance of what was seen. */
type On =
  | {
      readonly y: number;
      readonly never: boolean;
      readonly mean: number;
      readonly own: number;
      readonly moves: Float64Array;
      readonly shrinking: boolean;
    }
  | { readonly chance: number };

const dot = (a: Float64Array, b: Float64Array): number => {
  let sum = 0;
  for (let i = 0; i < SHARED; i += 1) sum += (a[i] ?? 0) * (b[i] ?? 0);
  return sum;
};

function on(hypothesis: Hypothesis, reading: TakenReading): On {
  const { test, value, temperatureC } = reading;
  if (!isNumeric(test))
    return { chance: chancesFor({ hypothesis }, test)[outcomeIndex(reading)] ?? 0 };
  const { mean, moves, own } = aloneOn(hypothesis, test, temperatureC);
  const never = neverStopped(reading);
  return {
    y: never ? LONGEST_STOP : onScale(test, value as number),
    never,
    mean,
    own,
    moves,
    shrinking: shrinks(test),
  };
}

/** Likelihood of a number under a mean and a variance. */
const likely = (never: boolean, y: number, mean: number, variance: number): number =>
  never ? normalBelow((mean - y) / Math.sqrt(variance)) : normalDensity(y, mean, variance);

function alone(one: On): number {
  if ('chance' in one) return one.chance;
  return likely(one.never, one.y, one.mean, one.own + dot(one.moves, one.moves));
}

function together(a: On, b: On): number {
  if ('chance' in a || 'chance' in b) return alone(a) * alone(b);
  // The number first: what did not stop tells less of the other.
  const [one, other] = a.never ? [b, a] : [a, b];
  const S = one.own + dot(one.moves, one.moves);
  const gain = one.never ? 0 : dot(one.moves, other.moves) / S;
  const mean = other.mean + gain * (one.y - one.mean);
  const variance = other.own + dot(other.moves, other.moves) - gain * dot(one.moves, other.moves);
  return likely(one.never, one.y, one.mean, S) * likely(other.never, other.y, mean, variance);
}

/** A reading on a car with two faults, from the car with each and the car with none. */
function onBoth(a: On, b: On, none: On): On {
  if ('chance' in a || 'chance' in b || 'chance' in none) {
    return { chance: Math.max(alone(a), alone(b)) };
  }
  const mean = bothMean(a.shrinking, a.mean, b.mean, none.mean);
  const moves = a.moves.map((move, i) => move + (b.moves[i] ?? 0) - (none.moves[i] ?? 0));
  return { ...a, mean, own: Math.max(a.own, b.own), moves };
}

/** Every so many severities of a fault, and its worst, where two faults are tried together. */
const STRIDE = 3;

/** What is held against every pair a reading is in. */
interface Weighted {
  /** Its law on each listed hypothesis, on those of them that are tried two and two, and on the car with nothing wrong. */
  readonly laws: readonly On[];
  readonly some: readonly On[];
  readonly none: On;
  /** The largest likelihood of all. */
  readonly best: number;
}
function weighted(cars: readonly Hypothesis[], reading: TakenReading): Weighted {
  const laws = cars.map((car) => on(car, reading));
  const tried = new Set(
    cars.flatMap(({ severity }, n) => (n % STRIDE === 0 || severity === 1 ? [n] : [])),
  );
  return {
    laws,
    some: laws.filter((_law, n) => tried.has(n)),
    none: on(healthyIn(cars), reading),
    best: laws.reduce((most, one) => Math.max(most, alone(one)), 0),
  };
}

/** Two readings on the same car, for each of the cars. */
const onEach = (ones: readonly On[], others: readonly On[]): readonly (readonly [On, On])[] =>
  ones.map((one, n) => [one, others[n] as On]);

/** The largest joint likelihood on two faults; no further than to what is enough. */
function mostOnTwo(one: Weighted, other: Weighted, enough: number): number {
  const tried = onEach(one.some, other.some);
  let most = 0;
  for (const [i, [oneA, otherA]] of tried.entries()) {
    for (const [oneB, otherB] of tried.slice(i + 1)) {
      const joint = together(onBoth(oneA, oneB, one.none), onBoth(otherA, otherB, other.none));
      if (joint > most) most = joint;
      if (most >= enough) return most;
    }
  }
  return most;
}

/** The share that is left of a pair; 1 where one fault or two leave it above the bar. */
function shareOf(one: Weighted, other: Weighted, bar: number): number {
  const product = one.best * other.best;
  const enough = bar * product;
  const most = onEach(one.laws, other.laws).reduce(
    (top, [a, b]) => Math.max(top, together(a, b)),
    0,
  );
  // Of what is nowhere to be seen all is enough.
  if (most >= enough) return 1;
  const two = mostOnTwo(one, other, enough);
  return two >= enough ? 1 : Math.max(most, two) / product;
}

/**
 * Finds contradictions pair by pair, so that a page may answer in between, and remembers those that it has tried: a sheet grows by
 * one reading at a time.
 */
export function contradictionFinder(
  hypotheses: readonly Hypothesis[],
  bar = NEGLIGIBLE_SHARE,
): (readings: readonly TakenReading[]) => Generator<undefined, readonly Contradiction[]> {
  const laws = new Map<string, Weighted>();
  const shares = new Map<string, number>();
  const keyOf = ({ test, value, temperatureC }: TakenReading): string =>
    JSON.stringify([test.id, value, temperatureC]);
  const kept = <Value>(map: Map<string, Value>, key: string, make: () => Value): Value => {
    const there = map.get(key);
    if (there !== undefined) return there;
    const made = make();
    map.set(key, made);
    return made;
  };
  const lawOf = (reading: TakenReading): Weighted =>
    kept(laws, keyOf(reading), () => weighted(hypotheses, reading));
  return function* (readings) {
    const found: Contradiction[] = [];
    for (const [second, other] of readings.entries()) {
      for (const [first, one] of readings.slice(0, second).entries()) {
        const share = kept(shares, `${keyOf(one)} ${keyOf(other)}`, () =>
          shareOf(lawOf(one), lawOf(other), bar),
        );
        if (share < bar) found.push({ first, second, share });
        yield undefined;
      }
    }
    return found;
  };
}

/** All pairs of readings that contradict each other. */
export const contradictions = (
  hypotheses: readonly Hypothesis[],
  readings: readonly TakenReading[],
  bar = NEGLIGIBLE_SHARE,
): readonly Contradiction[] => inOneGo(contradictionFinder(hypotheses, bar)(readings));
