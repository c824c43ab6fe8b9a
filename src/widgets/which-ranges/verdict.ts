import { CIRCUITS, type Circuit } from '../../engine/index.ts';
import {
  AIR_TARGETS,
  soundBench,
  soundReadings,
  TAPS,
  TESTS,
  testOf,
  type Bench,
  type Readings,
  type Tap,
  type Test,
} from './patterns.ts';

/** ok: within a tenth of a healthy transmission. gone: not enough for what this test asks. low: between the two. */
export type Word = 'ok' | 'low' | 'gone';
/** A tenth: what a shop gauge and a steady hand can tell for certain (common practice, no source). */
export const TENTH = 0.9;
/** Air: ten points under a good circuit is more than a nozzle held badly takes (common practice, no source). */
const AIR_POINTS = 10;

export interface Pattern {
  readonly taps: Readonly<Record<Tap, Readonly<Record<Test, Word>>>>;
  readonly torque: Readonly<Record<Circuit, Readonly<Record<Test, Word>>>>;
  readonly leftOver: Readonly<Record<Test, Word>>;
  readonly air: Readonly<Record<(typeof AIR_TARGETS)[number], 'ok' | 'leaks'>>;
}

const judge = (value: number, sound: number, least: number): Word => {
  if (value < least) return 'gone';
  return value >= TENTH * sound ? 'ok' : 'low';
};

const each = <K extends string, V>(keys: readonly K[], make: (key: K) => V): Record<K, V> =>
  Object.fromEntries(keys.map((key) => [key, make(key)])) as Record<K, V>;

/**
 * The readings as words. A clutch tap is gone below the pressure its clutch needs with sound
 * friction; the line, below the same number, since no clutch can have more than the line; torque,
 * below what the converter asks; what is left over, at nothing.
 */
export function patternOf(readings: Readings, bench: Bench): Pattern {
  return {
    taps: each(TAPS, (tap) =>
      each(TESTS, (test) =>
        judge(readings[test].taps[tap], soundReadings[test].taps[tap], testOf[test].need.pressure),
      ),
    ),
    torque: each(CIRCUITS, (circuit) =>
      each(TESTS, (test) =>
        judge(
          readings[test].torque[circuit],
          soundReadings[test].torque[circuit],
          testOf[test].need.torque,
        ),
      ),
    ),
    leftOver: each(TESTS, (test) => {
      const { leftOver } = readings[test];
      if (leftOver === 0) return 'gone';
      // Half, as in "Who goes hungry?": there is no command to hold it against.
      return leftOver < 0.5 * soundReadings[test].leftOver ? 'low' : 'ok';
    }),
    air: each(AIR_TARGETS, (target) =>
      bench[target] < soundBench[target] - AIR_POINTS ? 'leaks' : 'ok',
    ),
  };
}

/** Whether a tap reads one word in these tests. */
export const reads = (pattern: Pattern, tap: Tap, word: Word, tests: readonly Test[]): boolean =>
  tests.every((test) => pattern.taps[tap][test] === word);

export const COLD: readonly Test[] = ['cold-idle', 'cold-load'];
export const HOT: readonly Test[] = ['hot-idle', 'hot-load'];

/** What the pressure gauges say, as one string: two faults with the same one cannot be told apart by gauges. */
export const gaugePattern = ({ taps }: Pattern): string =>
  TAPS.flatMap((tap) => TESTS.map((test) => taps[tap][test])).join(' ');

/** Pressure right and torque short, in every range and every test: that is friction, nothing else. */
export const lacksFriction = (pattern: Pattern): boolean =>
  CIRCUITS.every((circuit) =>
    TESTS.every(
      (test) => pattern.taps[circuit][test] === 'ok' && pattern.torque[circuit][test] !== 'ok',
    ),
  );
