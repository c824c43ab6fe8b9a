/**
 * Two faults at once, as hypotheses of their own (specification of the planner, sections 8 and 10). The table has one fault a row,
 * so what two read together is put together from what each reads alone.
 */
import { expectedIn, healthyIn, type Expected, type Hypothesis } from './cells.ts';
import { CLASSES, isFault, type FaultClass } from './hypotheses.ts';
import { inOneGo } from './in-one-go.ts';
import { take, unit, type Posterior, type TakenReading, type Weighed } from './posterior.ts';
import { HELD_S } from './read-subject.ts';
import { SHARED } from './table.ts';
import { columnOf, isNumeric, type NumericTest } from './tests.ts';

/** Pressures and flows shrink by a share, the rest grows by a part: so two faults add up, nearly. */
export const shrinks = ({ kind }: NumericTest): boolean =>
  kind === 'linePressure' ||
  kind === 'clutchPressure' ||
  kind === 'coolerFlow' ||
  kind === 'airTest';

/**
 * How far that is off, sd, as a share of what the lesser of the two does alone: where one does nothing the other is all there is.
 * Of 80 pairs the engine's own readings lie 0 to 0.4 of it away, in nine of ten.
 */
const OFF = 0.4;

/** Mean of a test on a car with two faults, from its means with each and with none. */
export const bothMean = (shrinking: boolean, a: number, b: number, none: number): number =>
  shrinking && none > 0 ? (Math.max(0, a) * Math.max(0, b)) / none : a + b - none;

/** What a test reads with both, from what it reads with each and with none; `moves` takes how that moves. */
function together(
  test: NumericTest,
  [a, b, none]: readonly [Expected, Expected, Expected],
  moves: Float64Array,
): Expected {
  const both = bothMean(shrinks(test), a.mean, b.mean, none.mean);
  const off = OFF * Math.min(Math.abs(a.mean - none.mean), Math.abs(b.mean - none.mean));
  for (let i = 0; i < SHARED; i += 1) {
    moves[i] = (a.moves[i] ?? 0) + (b.moves[i] ?? 0) - (none.moves[i] ?? 0);
  }
  const mean = test.kind === 'stopTime' ? Math.min(HELD_S, both) : both;
  return { mean, moves, own: Math.max(a.own, b.own) + off ** 2 };
}

/** A pair of hypotheses. */
interface Both {
  readonly of: readonly [Hypothesis, Hypothesis];
  readonly cell: Weighed;
}

/** `expected`: where what it expects of the reading at hand is put, for one pair after the other. */
function bothOf(a: Hypothesis, b: Hypothesis, log: number, expected: Expected[]): Both {
  const { stop, slip, highTap } = a.signs;
  const other = b.signs;
  // A sensor that lies says what the codes are, whatever else there is.
  const [first, second] = b.of.name === 'turbineSensor' ? [b, a] : [a, b];
  return {
    of: [a, b],
    cell: {
      hypothesis: {
        of: first.of,
        index: first.index,
        severity: first.severity,
        second,
        expected,
        signs: {
          stop: {
            drive: Math.max(stop.drive, other.stop.drive),
            reverse: Math.max(stop.reverse, other.stop.reverse),
          },
          slip: {
            drive: Math.max(slip.drive, other.slip.drive),
            reverse: Math.max(slip.reverse, other.slip.reverse),
          },
          highTap: Math.min(highTap, other.highTap),
        },
      },
      log,
      z: new Float64Array(SHARED),
      P: unit(),
      off: 0,
    },
  };
}

/** So many severities of a fault are tried, evenly over those that show. */
const TRIED = 4;
const some = (of: readonly Hypothesis[]): readonly Hypothesis[] =>
  of.filter((_one, i) =>
    Array.from({ length: TRIED }, (_, k) => Math.floor(((k + 0.5) * of.length) / TRIED)).includes(
      i,
    ),
  );

/** All pairs of faults of different names: each name alike, each circuit alike, severity evenly, as one fault is believed. */
function allPairs(hypotheses: readonly Hypothesis[], expected: Expected[]): Both[] {
  const all = CLASSES.flatMap((of, index) => {
    const mine = hypotheses.filter((one) => one.index === index);
    return isFault(of.name) && mine.length > 0 ? [{ of, cars: some(mine) }] : [];
  });
  const weightOf = ({ name }: FaultClass): number =>
    1 / all.filter(({ of }) => of.name === name).length;
  const pairs = all.flatMap((a, i) =>
    all
      .slice(i + 1)
      .filter((b) => a.of.name !== b.of.name)
      .map((b) => ({ as: a.cars, bs: b.cars, weight: weightOf(a.of) * weightOf(b.of) })),
  );
  const sum = pairs.reduce((total, { weight }) => total + weight, 0);
  return pairs.flatMap(({ as, bs, weight }) => {
    const log = Math.log(weight / sum / as.length / bs.length);
    return as.flatMap((a) => bs.map((b) => bothOf(a, b, log, expected)));
  });
}

/** So many pairs take a reading before a breath. */
const AT_ONCE = 300;
/** From here down a pair does not come back [ln]. */
const HOPELESS = 40;

export interface TwoFaults {
  /** How many times likelier two faults are than one or none, were both as likely beforehand. */
  readonly odds: number;
  /** Likeliest pair first, with its share of all pairs. */
  readonly pairs: readonly {
    readonly of: readonly [FaultClass, FaultClass];
    readonly share: number;
  }[];
}

const sumOf = (logs: readonly number[], most: number): number =>
  logs.reduce((sum, log) => sum + Math.exp(log - most), 0);

const moves = new Float64Array(SHARED);

/** Puts what a test reads on a pair where its cell expects it. */
function putInto(expected: Expected[], test: NumericTest, none: Hypothesis) {
  const column = columnOf(test.id);
  const sound = expectedIn(none, column);
  return ([a, b]: Both['of']): void => {
    expected[column] = together(test, [expectedIn(a, column), expectedIn(b, column), sound], moves);
  };
}

function takeOn(
  pairs: readonly Both[],
  none: Hypothesis,
  reading: TakenReading,
  expected: Expected[],
): void {
  const { test } = reading;
  const put = isNumeric(test) ? putInto(expected, test, none) : () => undefined;
  for (const { of, cell } of pairs) {
    put(of);
    take([cell], reading);
  }
}

/** Weighs pairs, some at a time. `posterior`: of the same readings, on one fault. */
export function* twoFaultSteps(
  hypotheses: readonly Hypothesis[],
  { cells }: Posterior,
  readings: readonly TakenReading[],
): Generator<undefined, TwoFaults> {
  const none = healthyIn(hypotheses);
  const expected: Expected[] = [];
  let left: readonly Both[] = allPairs(hypotheses, expected);
  yield;
  for (const reading of readings) {
    for (let from = 0; from < left.length; from += AT_ONCE) {
      takeOn(left.slice(from, from + AT_ONCE), none, reading, expected);
      yield;
    }
    const most = left.reduce((log, { cell }) => Math.max(log, cell.log), -Infinity);
    left = left.filter(({ cell }) => cell.log > most - HOPELESS);
  }
  const single = cells.filter(({ broken }) => broken === undefined).map(({ log }) => log);
  const double = left.map(({ cell }) => cell.log);
  const most = [...single, ...double].reduce((log, one) => Math.max(log, one), -Infinity);
  const all = sumOf(double, most);
  const shares = new Map<string, { of: readonly [FaultClass, FaultClass]; share: number }>();
  for (const { of, cell } of left) {
    const key = `${of[0].index} ${of[1].index}`;
    const before = shares.get(key)?.share ?? 0;
    const share = before + Math.exp(cell.log - most) / all;
    shares.set(key, { of: [of[0].of, of[1].of], share });
  }
  return {
    odds: all / sumOf(single, most),
    pairs: [...shares.values()].sort((a, b) => b.share - a.share),
  };
}

export const twoFaults = (
  hypotheses: readonly Hypothesis[],
  posterior: Posterior,
  readings: readonly TakenReading[],
): TwoFaults => inOneGo(twoFaultSteps(hypotheses, posterior, readings));
