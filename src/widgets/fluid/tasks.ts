import { COOL_C, coolAndHot, HOT_C } from '../../simulation/choices/temperatures.ts';
import { aim, judged } from '../../simulation/judged.ts';
import type { TaskSpec } from '../../simulation/sim-spec.ts';
import { told } from '../../simulation/told.ts';
import { printer } from '../../quantity/print.ts';
import { temperature } from '../../quantity/quantities.ts';
import { facts } from './facts.ts';
import { DEFAULT_DENSITY, type FluidGivens, type FluidModel, type Thickness } from './model.ts';
import { printIndex, printTimes } from './print.ts';
import { cSt } from './sim.ts';
import { words } from './task-words.en.ts';

const texts = told(words.tasks, facts);
const { reached } = words;
const thinner = (one: Thickness | null, other: Thickness | null): boolean =>
  one !== null && other !== null && one.kinematic < other.kinematic;

export const tasks: readonly TaskSpec<FluidGivens, FluidModel>[] = [
  {
    id: 'ten-times',
    ...texts.tenTimes,
    start: { temp: COOL_C, fluidA: 'low-viscosity', fluidB: 'standard', log: false },
    controls: ['temp'],
    ...judged(({ a, givens }) => {
      const times = a.times.value;
      if (times === null) return null;
      const temp = givens.temp.value;
      return {
        is: aim({ value: times, least: 9.5, most: 10.5, near: 1.5 }),
        reached: (s) =>
          reached[times < 1 ? 'thicker' : 'thinner']({
            ...coolAndHot(s),
            temp: printer(s)(temp, temperature),
            times: printTimes(times),
          }),
      };
    }),
  },
  {
    id: 'cross',
    ...texts.cross,
    start: { temp: COOL_C, fluidA: 'low-viscosity', fluidB: 'ultra-low', log: true },
    controls: ['temp', 'fluidA', 'fluidB'],
    ...judged(({ a, b, givens }) => {
      // The wrong two: to say which are the right ones would be the hint.
      if (!thinner(b.hot.value, a.hot.value)) return null;
      const [temp, atA, atB] = [givens.temp.value, a.now.value, b.now.value];
      return {
        is: thinner(atA, atB) ? 'done' : 'nearly',
        reached: (s) =>
          reached.stillThicker({
            temp: printer(s)(temp, temperature),
            a: cSt(atA),
            b: cSt(atB),
          }),
      };
    }),
  },
  {
    id: 'higher-index',
    ...texts.higherIndex,
    start: {
      temp: HOT_C,
      fluidA: 'own',
      fluidB: 'low-viscosity',
      own40: 32,
      own100: 5.4,
      own15: DEFAULT_DENSITY,
      log: true,
    },
    controls: ['own40', 'own100'],
    ...judged(({ a, b, givens }) => {
      const [mine, other] = [a.index.value, b.index.value];
      if (mine === null || other === null || givens.fluidA.value !== 'own') return null;
      return {
        is: mine > other ? 'done' : mine > other - 10 ? 'nearly' : 'too-low',
        reached: reached.index({ a: printIndex(mine), b: printIndex(other) }),
      };
    }),
  },
];
