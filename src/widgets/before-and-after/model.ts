import { computed } from '@preact/signals';
import { COMPLAINT_C, type Repair } from '../../car/repair-names.ts';
import { compare, readAs, type Taken } from '../../diagnosis/before-after.ts';
import { testOf, isNumeric, type NumericTest } from '../../diagnosis/tests.ts';
import { givensFrom } from '../../simulation/givens.ts';
import type { SimModel } from '../../simulation/sim-spec.ts';
import { readingAt, type Point, type TestName } from './brought.ts';

export type Load = 'idle' | 'fast' | 'mixed';
export type CarName = 'a' | 'b' | 'c' | 'd';
/** What each car has, once it has been repaired. */
export const HAS: Readonly<Record<CarName, Repair>> = {
  a: 'sound',
  b: 'half',
  c: 'rings',
  d: 'untouched',
};

export type ProofGivens = {
  /** Fluid when each of the two was read [°C]. */
  before: number;
  after: number;
  test: TestName;
  load: Load;
  /** Time between two rows of the log [s]. */
  rows: '0.1' | '0.5';
  car: CarName;
};
export const COLD_PAIR = { before: 20, after: 20 } as const;
export const MIXED_PAIR = { before: COMPLAINT_C, after: 85 } as const;
export const HOT_PAIR = { before: COMPLAINT_C, after: COMPLAINT_C } as const;
const START: ProofGivens = { ...HOT_PAIR, test: 'tap', load: 'idle', rows: '0.1', car: 'a' };

const RPM: Readonly<Record<Point, number>> = { idle: 700, load: 1500 };
/** How the engine runs before and after. Drive is always selected at idle. */
export const pointsOf = ({ test, load }: Pick<ProofGivens, 'test' | 'load'>): readonly Point[] => {
  if (test === 'stop' || load === 'idle') return ['idle', 'idle'];
  return load === 'fast' ? ['load', 'load'] : ['idle', 'load'];
};

/** What the site knows of a test: its errors. */
export function testBehind(test: TestName): NumericTest {
  const found = testOf(
    test === 'tap'
      ? 'clutch.forward.700.hot'
      : test === 'line'
        ? 'line.drive.700.hot'
        : 'stopTime.drive.hot',
  );
  if (!isNumeric(found)) throw new Error(`"${test}" is read in words.`);
  return found;
}

/** Reads a test on a car. */
export const take = (car: Repair, test: TestName, tempC: number, point: Point): Taken => ({
  value: readingAt(car, test, point, tempC),
  tempC,
  rpm: RPM[point],
});

/** Both readings, what a sound car reads beside the second, and what the pair proves. */
export function pairOf(state: ProofGivens) {
  const { test, rows, car } = state;
  const [was = 'idle', is = 'idle'] = pointsOf(state);
  const before = take('untouched', test, state.before, was);
  const after = take(HAS[car], test, state.after, is);
  const right = readAs(take('sound', test, state.after, is));
  const behind = testBehind(test);
  const step = Number(rows);
  return {
    before,
    after,
    right,
    ...compare(behind, before, after, { right, hotC: COMPLAINT_C, step }),
  };
}
export const pairAt = (state: Partial<ProofGivens>) => pairOf({ ...START, ...state });

export function makeModel() {
  const { givens, apply, reset } = givensFrom(START);
  const state = computed<ProofGivens>(() => ({
    before: givens.before.value,
    after: givens.after.value,
    test: givens.test.value,
    load: givens.load.value,
    rows: givens.rows.value,
    car: givens.car.value,
  }));
  return {
    givens,
    apply,
    reset,
    state,
    pair: computed(() => pairOf(state.value)),
  } satisfies SimModel<ProofGivens> & Record<string, unknown>;
}
export type ProofModel = ReturnType<typeof makeModel>;
