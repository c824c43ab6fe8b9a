import {
  airHeld,
  CIRCUITS,
  type AirTestTarget,
  type Circuit,
  type Plant,
} from '../engine/index.ts';
import { soundCar, type Car } from './car.ts';
import { COLD_C, HOT_C } from './cold-and-hot.ts';
import { demandAt, needs, type Need } from './need.ts';
import { inEachRange, type Reading } from './readings.ts';

/**
 * The pattern a shop reads off its gauges: each range engaged with the car held, at idle and under load, cold and hot,
 * and air on the bench. Reverse is boosted, in what is commanded as in what it reads.
 */
export const SHOP_TESTS = ['cold-idle', 'cold-load', 'hot-idle', 'hot-load'] as const;
/** Name of one of the four tests. */
export type ShopTest = (typeof SHOP_TESTS)[number];
/** The tests at one temperature. */
export const COLD_TESTS: readonly ShopTest[] = ['cold-idle', 'cold-load'];
/** See COLD_TESTS. */
export const HOT_TESTS: readonly ShopTest[] = ['hot-idle', 'hot-load'];

interface Conditions {
  readonly tempC: number;
  readonly point: keyof Plant['testPoints'];
}
/** Temperature and test point of each test. */
export const conditionsOf: Readonly<Record<ShopTest, Conditions>> = {
  'cold-idle': { tempC: COLD_C, point: 'idle' },
  'cold-load': { tempC: COLD_C, point: 'load' },
  'hot-idle': { tempC: HOT_C, point: 'idle' },
  'hot-load': { tempC: HOT_C, point: 'load' },
};

/** Where a gauge can be put. */
export const TAPS = ['line', ...CIRCUITS] as const;
/** Name of a tap. */
export type Tap = (typeof TAPS)[number];

/** One test, each range on its own. */
export interface TestReadings {
  readonly ranges: Readonly<Record<Circuit, Reading>>;
  /** Pressures [kPa]: the lowest line of the three ranges, each clutch at its own tap in its own range. */
  readonly taps: Readonly<Record<Tap, number>>;
  /** Torque that each range's clutch can hold [N·m]. */
  readonly torque: Readonly<Record<Circuit, number>>;
  /** Left for converter, cooler and lubrication, in the range that leaves least [L/min]. */
  readonly leftOver: number;
}
/** All four tests. */
export type ShopReadings = Readonly<Record<ShopTest, TestReadings>>;

const each = <K extends string, V>(keys: readonly K[], make: (key: K) => V): Record<K, V> =>
  Object.fromEntries(keys.map((key) => [key, make(key)])) as Record<K, V>;

/** What the gauges show in the four tests. */
export function shopReadings(car: Car): ShopReadings {
  return each(SHOP_TESTS, (test) => {
    const ranges = inEachRange(car, conditionsOf[test]);
    const clutch = (circuit: Circuit) => ranges[circuit].clutches[circuit];
    return {
      ranges,
      taps: {
        // One gauge on the line, whichever range is engaged: the lowest it shows.
        line: Math.min(...CIRCUITS.map((circuit) => ranges[circuit].lineKpa)),
        ...each(CIRCUITS, (circuit) => clutch(circuit).kPa),
      },
      torque: each(CIRCUITS, (circuit) => clutch(circuit).holdsNm),
      leftOver: Math.min(...CIRCUITS.map((circuit) => ranges[circuit].leftOverLmin)),
    };
  });
}

/** What can be put under air. */
export const AIR_TARGETS: readonly AirTestTarget[] = [...CIRCUITS, 'transferSeal'];
/** Percent of the supply that stays behind the tester's hole, place by place. */
export type Bench = Readonly<Record<AirTestTarget, number>>;

/** Air test of every place [% held]. */
export const benchOf = ({ plant }: Car): Bench =>
  each(AIR_TARGETS, (target) => 100 * airHeld(plant, target));

/** ok: within a tenth of a sound transmission. gone: not enough for what this test asks. low: between the two. */
export type Verdict = 'ok' | 'low' | 'gone';
/** A tenth: what a shop gauge and a steady hand can tell for certain (common practice, no source). */
export const TENTH = 0.9;
/** Air: ten points under a sound circuit is more than a nozzle held badly takes (common practice, no source). */
export const AIR_POINTS = 10;

const judge = (value: number, sound: number, least: number): Verdict => {
  if (value < least) return 'gone';
  return value >= TENTH * sound ? 'ok' : 'low';
};

/** What a test asks of a clutch with healthy friction. */
export const needIn = (test: ShopTest): Need => needs[demandAt[conditionsOf[test].point]];

/** The readings as verdicts. */
export interface Pattern {
  readonly taps: Readonly<Record<Tap, Readonly<Record<ShopTest, Verdict>>>>;
  readonly torque: Readonly<Record<Circuit, Readonly<Record<ShopTest, Verdict>>>>;
  readonly leftOver: Readonly<Record<ShopTest, Verdict>>;
  readonly air: Readonly<Record<AirTestTarget, 'ok' | 'leaks'>>;
}

/** Readings and bench of the healthy training car. */
export const soundReadings = shopReadings(soundCar);
/** See soundReadings. */
export const soundBench = benchOf(soundCar);

/** Whether a place holds clearly less air than a healthy one. */
export const leaksAir = (bench: Bench, target: AirTestTarget): boolean =>
  bench[target] < soundBench[target] - AIR_POINTS;

/**
 * Readings of a training car as verdicts. A clutch tap is gone below the pressure its clutch needs with healthy friction;
 * the line, below the same number, since no clutch can have more than the line; torque, below what the converter asks;
 * what is left over, at nothing.
 */
export function patternOf(readings: ShopReadings, bench: Bench): Pattern {
  return {
    taps: each(TAPS, (tap) =>
      each(SHOP_TESTS, (test) =>
        judge(readings[test].taps[tap], soundReadings[test].taps[tap], needIn(test).kPa),
      ),
    ),
    torque: each(CIRCUITS, (circuit) =>
      each(SHOP_TESTS, (test) =>
        judge(
          readings[test].torque[circuit],
          soundReadings[test].torque[circuit],
          needIn(test).torqueNm,
        ),
      ),
    ),
    leftOver: each(SHOP_TESTS, (test) => {
      const { leftOver } = readings[test];
      if (leftOver === 0) return 'gone';
      // Half: there is no command to hold it against.
      return leftOver < 0.5 * soundReadings[test].leftOver ? 'low' : 'ok';
    }),
    air: each(AIR_TARGETS, (target) => (leaksAir(bench, target) ? 'leaks' : 'ok')),
  };
}

/** Whether a tap reads one verdict in these tests. */
export const reads = (
  pattern: Pattern,
  tap: Tap,
  verdict: Verdict,
  tests: readonly ShopTest[],
): boolean => tests.every((test) => pattern.taps[tap][test] === verdict);

/** What the pressure gauges say, as one string: two faults with the same one cannot be told apart by gauges. */
export const gaugePattern = ({ taps }: Pattern): string =>
  TAPS.flatMap((tap) => SHOP_TESTS.map((test) => taps[tap][test])).join(' ');

/** Pressure right and torque short, in every range and every test: that is friction, nothing else. */
export const lacksFriction = (pattern: Pattern): boolean =>
  CIRCUITS.every((circuit) =>
    SHOP_TESTS.every(
      (test) => pattern.taps[circuit][test] === 'ok' && pattern.torque[circuit][test] !== 'ok',
    ),
  );
