import { computed, effect } from '@preact/signals';
import { training as plant } from '../../engine/index.ts';
import { needed, type Required } from '../../simulation/required/control.ts';
import { givensFrom } from '../../simulation/givens.ts';
import type { SimModel } from '../../simulation/sim-spec.ts';
import { books, pressureFor, torqueOf, type Book, type ClutchBuild } from './books.ts';

/** The chart's pressures. Two points would do for a line with a corner; these keep the cursor fine enough to read. */
export const SWEEP: readonly number[] = Array.from({ length: 61 }, (_, i) => i * 20);

export type Example = 'training' | Book | 'own';

export type HoldingGivens = {
  /** [kPa] */
  pressure: number;
  friction: number;
  faces: number;
  required: Required;
  example: Example;
  /** [cm²] */
  area: number;
  /** [mm] */
  radius: number;
  /** [N] */
  spring: number;
};

const clutch = plant.clutches.forward;
/** Metres times a thousand leave binary dust, which no slider stop would ever equal. */
const clean = (value: number): number => Math.round(value * 1e6) / 1e6;
export const training: ClutchBuild = {
  pressure: 400,
  friction: clutch.friction,
  faces: clutch.faces,
  area: clean(clutch.area * 1e4),
  radius: clean(clutch.meanRadius * 1e3),
  spring: clutch.springForce,
};
const START: HoldingGivens = { ...training, required: 'take-off', example: 'training' };

const buildOf = (example: Example): ClutchBuild | null =>
  example === 'own' ? null : example === 'training' ? training : books[example].build;
const SIZES = ['friction', 'faces', 'area', 'radius', 'spring'] as const;
/** Pressure is part of a book's question; the training clutch stays itself at any pressure. */
const partsOf = (example: Example): readonly (keyof ClutchBuild)[] =>
  example === 'training' ? SIZES : ['pressure', ...SIZES];

const pick = (build: ClutchBuild, keys: readonly (keyof ClutchBuild)[]): Partial<HoldingGivens> =>
  Object.fromEntries(keys.map((key) => [key, build[key]]));

export function makeModel() {
  const { givens, apply: set } = givensFrom(START);
  const sizes = computed(() => ({
    friction: givens.friction.value,
    faces: givens.faces.value,
    area: givens.area.value,
    radius: givens.radius.value,
    spring: givens.spring.value,
  }));
  const build = computed((): ClutchBuild => ({ ...sizes.value, pressure: givens.pressure.value }));
  let current = START.example;
  /** An example brings its numbers; what is said besides has the last word. */
  const apply = (partial: Partial<HoldingGivens>) => {
    const { example } = partial;
    if (example !== undefined) current = example;
    set({ ...(example === undefined ? null : buildOf(example)), ...partial });
  };
  // Choosing an example sets its numbers; moving one of them afterwards makes it your own clutch.
  effect(() => {
    const numbers = build.value;
    const example = givens.example.value;
    const wanted = buildOf(example);
    if (example !== current) {
      current = example;
      if (wanted) set(pick(wanted, partsOf(example)));
    } else if (wanted && partsOf(example).some((key) => numbers[key] !== wanted[key])) {
      current = 'own';
      givens.example.value = 'own';
    }
  });

  const torque = computed(() => torqueOf(build.value));
  const need = computed(() => needed[givens.required.value].torqueNm);
  return {
    givens,
    apply,
    reset: () => apply(START),
    build,
    /** What the clutch can hold [N m]. */
    torque,
    need,
    holds: computed(() => torque.value >= need.value),
    /** The pressure [kPa] from which on it holds what is asked. */
    needPressure: computed(() => pressureFor(build.value, need.value)),
    /** Pressure [kPa] that only balances the spring. */
    springPressure: computed(() => pressureFor(build.value, 0)),
    /** Forces [N]: oil, spring, and what is left for the plates. */
    force: computed(() => {
      const { pressure, area, spring } = build.value;
      const oil = pressure * area * 0.1;
      return { oil, spring, net: Math.max(0, oil - spring) };
    }),
    /** Holding torque [N m] at each pressure of the sweep; does not move with pressure. */
    line: computed(() => SWEEP.map((kpa) => torqueOf({ ...sizes.value, pressure: kpa }))),
    trainingLine: SWEEP.map((kpa) => torqueOf(training, kpa)),
    holdsWith: (change: Partial<ClutchBuild>) =>
      torqueOf({ ...build.peek(), ...change }) >= need.peek(),
  } satisfies SimModel<HoldingGivens> & Record<string, unknown>;
}
export type HoldingModel = ReturnType<typeof makeModel>;
