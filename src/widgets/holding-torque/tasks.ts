import { printer } from '../../quantity/print.ts';
import { power, speed, torque } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { aim, judged } from '../../simulation/judged.ts';
import type { TaskSpec } from '../../simulation/sim-spec.ts';
import { told } from '../../simulation/told.ts';
import { powerOf } from './books.ts';
import { bookRpm, facts, HALF, khurmi, NEAR, needIn } from './facts.ts';
import type { HoldingGivens, HoldingModel } from './model.ts';
import { FRICTION, start } from './sim.ts';
import { words } from './task-words.en.ts';

const texts = told(words.tasks, facts);
const { reached } = words;

/** What it carries against what taking off asks, said where a hand rests short of a task or past it. */
const carries =
  ({ torque: has }: HoldingModel) =>
  (system: UnitSystem): string =>
    reached.holds({
      has: printer(system)(has.value, torque),
      need: needIn('take-off', system).need,
    });

export const tasks: readonly TaskSpec<HoldingGivens, HoldingModel>[] = [
  {
    id: 'only-just',
    ...texts.onlyJust,
    start: { ...start, pressure: HALF },
    controls: ['pressure'],
    ...judged((model) => {
      const over = model.givens.pressure.value - model.needPressure.value;
      return {
        is: aim({ value: over, least: 0, most: NEAR, near: NEAR }),
        reached: carries(model),
      };
    }),
  },
  {
    id: 'worn-plates',
    ...texts.worn,
    start,
    controls: ['friction'],
    ...judged((model) => {
      const { holds, holdsWith, givens } = model;
      const more = (steps: number): number =>
        Math.min(FRICTION.max, givens.friction.value + FRICTION.step * steps);
      if (holds.value) return { is: 'too-high', reached: carries(model) };
      // A hair more than a step: stops are sums of a tenth that binary has not got.
      return {
        is: holdsWith({ friction: more(1.01) }) ? 'done' : 'too-low',
        reached: carries(model),
      };
    }),
  },
  {
    id: 'plates-short',
    ...texts.plates,
    start: { ...start, faces: 4 },
    controls: ['faces'],
    ...judged((model) => {
      const { holds, holdsWith, givens } = model;
      if (!holds.value) return { is: 'too-low', reached: carries(model) };
      return {
        is: holdsWith({ faces: givens.faces.value - 1 }) ? 'too-high' : 'done',
        reached: carries(model),
      };
    }),
  },
  {
    id: 'by-the-book',
    ...texts.book,
    start,
    controls: ['example', 'pressure', 'friction', 'faces', 'area', 'radius', 'spring'],
    ...judged(({ build, torque: has }) => {
      const { pressure: kpa, faces: sides, spring } = build.value;
      const book = khurmi.build;
      // Sizes set by hand are rounded as printed: half a psi alone is 3.4 kPa, and two per cent of the power.
      const sizes =
        Math.abs(kpa - book.pressure) < 3.5 && sides === book.faces && spring === book.spring;
      if (!sizes) return null;
      const value = powerOf(has.value, bookRpm);
      const is = aim({ value, least: 18.2, most: 19.4, near: 1 });
      return {
        is,
        reached: (system) => {
          const print = printer(system);
          return reached.power({ power: print(value, power), speed: print(bookRpm, speed) });
        },
      };
    }),
  },
];
