import { COOL_C, coolAndHot, HOT_C, TEMP } from '../../simulation/choices/temperatures.ts';
import { aim, judged } from '../../simulation/judged.ts';
import type { TaskSpec } from '../../simulation/sim-spec.ts';
import { told } from '../../simulation/told.ts';
import { printer } from '../../quantity/print.ts';
import { temperature } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { facts } from './facts.ts';
import {
  DEFAULT_DENSITY,
  thicknessAt,
  type FluidGivens,
  type FluidModel,
  type Thickness,
} from './model.ts';
import { printIndex, printTimes } from './print.ts';
import { cSt } from './sim.ts';
import { words } from './task-words.en.ts';

const texts = told(words.tasks, facts);
const { reached } = words;
const { pairs } = reached;
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
      // Which pair is the right one would be the hint; what is wrong with this one is not.
      const answer = (
        is: 'done' | 'too-high' | 'not-that',
        words: keyof typeof pairs,
        at: number,
      ) => ({
        is,
        reached: (s: UnitSystem) =>
          pairs[words]({
            temp: printer(s)(at, temperature),
            a: cSt(thicknessAt(a.fluid.value, at)),
            b: cSt(thicknessAt(b.fluid.value, at)),
          }),
      });
      const temp = givens.temp.value;
      if (!thinner(b.hot.value, a.hot.value)) return answer('not-that', 'thinnerHot', HOT_C);
      if (thinner(a.now.value, b.now.value)) return answer('done', 'turned', temp);
      const coldest = [a, b].map(({ fluid }) => thicknessAt(fluid.value, TEMP.min));
      return thinner(coldest[0] ?? null, coldest[1] ?? null)
        ? answer('too-high', 'stillThicker', temp)
        : answer('not-that', 'neverTurns', TEMP.min);
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
