import { computed, signal } from '@preact/signals';
import { FAULT_IDS, type FaultId } from '../../engine/index.ts';
import { givensFrom } from '../../simulation/givens.ts';
import type { SimModel } from '../../simulation/sim-spec.ts';
import { CARS, commands, solved, solvedOf, type BenchCar, type Solved } from './cars.ts';
import { PAIRS, type Pair } from './pairs.ts';
import { ACROSS, columnAt, placeAt, PLACES, READINGS, type Place } from './places.ts';

/** What is written down in each row of the sheet: a bit for each of its readings. */
export type Sheet = Record<Place, number>;
export type GaugeGivens = Sheet & {
  /** Number of the car. */
  car: string;
  /** What the learner says it has. */
  named: FaultId | 'none';
};

export const EMPTY = Object.fromEntries(PLACES.map((place) => [place, 0])) as Sheet;
export const START: GaugeGivens = { ...EMPTY, car: '1', named: 'none' };

/**
 * Two readings are the same number to a shop when they are within this: five parts in a hundred, or a needle's breadth and a
 * half [kPa]. About twice what the planner takes for a gauge's error (our assumption).
 */
export const TOLERANCE = { share: 0.05, kPa: 20 } as const;
export const alike = (read: number, other: number): boolean =>
  Math.abs(read - other) <= Math.max(TOLERANCE.share * read, TOLERANCE.kPa);

/** Whether a car gives these readings. */
const gives = (one: Solved, taken: readonly number[], read: readonly number[]): boolean =>
  taken.every((reading) => alike(read[reading] ?? 0, one.kPa[reading] ?? 0));

export function makeModel() {
  const { givens, apply, reset } = givensFrom(START);
  /** The reading that the gauge was last set up for. */
  const last = signal<number | null>(null);
  const car = computed((): BenchCar => CARS[Number(givens.car.value) - 1] ?? (CARS[0] as BenchCar));
  const read = computed(() => solvedOf(car.value).kPa);
  const taken = computed(() =>
    Array.from({ length: READINGS }, (_, reading) => reading).filter((reading) =>
      Boolean(givens[placeAt(reading)].value & (1 << columnAt(reading))),
    ),
  );
  /** What is on the gauge: the last reading taken, of those on the sheet. */
  const shown = computed(() => {
    const now = last.value;
    return now !== null && taken.value.includes(now) ? now : (taken.value.at(-1) ?? null);
  });
  /** Of the fifteen, those that give the same numbers at some severity. */
  const fitting = (readings: readonly number[]): readonly FaultId[] => {
    const names = new Set(
      solved()
        .slice(1)
        .filter((one) => gives(one, readings, read.value))
        .map(({ name }) => name),
    );
    return FAULT_IDS.filter((name) => names.has(name));
  };
  const fits = computed(() => fitting(taken.value));
  const pairs = computed((): readonly Pair[] =>
    PAIRS.filter(
      ({ first, second }) => taken.value.includes(first) && taken.value.includes(second),
    ),
  );
  /** Readings on the sheet that make a pair with the one on the gauge. */
  const partners = computed(() =>
    pairs.value.flatMap(({ first, second }) =>
      first === shown.value ? [second] : second === shown.value ? [first] : [],
    ),
  );
  return {
    givens,
    apply,
    reset,
    last,
    car,
    read,
    taken,
    shown,
    fits,
    fitting,
    /** Whether a car with nothing wrong gives these numbers too. */
    soundFits: computed(() => {
      const sound = solved()[1];
      return sound !== undefined && gives(sound, taken.value, read.value);
    }),
    pairs,
    partners,
    /** Of its command, 1 where it has all of it. */
    shareOf: (reading: number): number =>
      (read.value[reading] ?? 0) / (commands()[reading] ?? Infinity),
    /** Takes a reading, or wipes it off. */
    toggle(reading: number): void {
      const row = givens[placeAt(reading)];
      row.value ^= 1 << columnAt(reading);
      last.value = reading;
    },
  } satisfies SimModel<GaugeGivens> & Record<string, unknown>;
}
export type GaugeModel = ReturnType<typeof makeModel>;
export const bit = (...columns: readonly number[]): number =>
  columns.reduce((all, column) => all | (1 << (column % ACROSS)), 0);
