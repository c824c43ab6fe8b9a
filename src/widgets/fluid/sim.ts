import { FLUID_LIMITS } from '../../engine/index.ts';
import { fluidOptions } from '../../simulation/choices/fluid-class.ts';
import { numberControl, temperatureControl } from '../../simulation/choices/number.ts';
import { COOL_C, coolAndHot, HOT_C } from '../../simulation/choices/temperatures.ts';
import type { SimSpec } from '../../simulation/sim-spec.ts';
import { told, withIds } from '../../simulation/told.ts';
import { kinematicViscosity } from '../../quantity/quantities.ts';
import { density } from '../../quantity/part-quantities.ts';
import { facts } from './facts.ts';
import { DEFAULT_DENSITY, type FluidGivens, type FluidModel, type Thickness } from './model.ts';
import { ownLabel, printCst, printTimes, saysSide } from './print.ts';
import { words } from './words.en.ts';

const { options, ...predict } = told(words.predict, facts);
const { controls } = words;

const { kv40CSt, kv100CSt } = FLUID_LIMITS;
const DENSITY = { min: 801, max: 1000, step: 1 };
const fluids = [...fluidOptions, { value: 'own', words: words.ownOption }];
export const cSt = (at: Thickness | null): string =>
  at ? printCst(at.kinematic) : words.table.none;

/** Where "about 2" gives way to "about 5", and that to "10 or more". */
const FIVE_FROM = 3.2;
const TEN_FROM = 7.1;

export const sim: SimSpec<FluidGivens, FluidModel> = {
  id: 'fluid',
  title: words.title,
  linkVersion: 1,
  controls: [
    temperatureControl('temp'),
    { kind: 'choice', key: 'fluidA', label: controls.fluidA, options: fluids, as: 'select' },
    { kind: 'choice', key: 'fluidB', label: controls.fluidB, options: fluids, as: 'select' },
    numberControl('own40', ownLabel('own40'), kinematicViscosity, { ...kv40CSt, step: 0.1 }),
    numberControl('own100', ownLabel('own100'), kinematicViscosity, { ...kv100CSt, step: 0.1 }),
    numberControl('own15', ownLabel('own15'), density, DENSITY, (value) =>
      value === DEFAULT_DENSITY ? controls.usualDensity : '',
    ),
    { kind: 'flag', key: 'log', label: controls.log, on: controls.logOn, off: controls.logOff },
  ],
  predict: {
    ...predict,
    options: withIds(options),
    start: { temp: COOL_C, fluidA: 'low-viscosity', fluidB: 'standard', log: false },
    end: { temp: HOT_C },
    outcome: ({ a }) => {
      const times = a.times.value ?? 1;
      const [from, to] = [cSt(a.cool.value), cSt(a.now.value)];
      return {
        option: times < FIVE_FROM ? 'two' : times < TEN_FROM ? 'five' : 'ten',
        words: (s) =>
          words.outcome({
            ...coolAndHot(s),
            times: printTimes(times),
            from,
            to,
          }),
      };
    },
  },
  says: ({ a, b, givens, own }, s) => {
    const temp = givens.temp.value;
    const second =
      givens.fluidA.value === givens.fluidB.value
        ? words.says.sameFluid
        : saysSide('B', b, temp, s);
    // The two fields may be folded away, as they are when a link gave the pair.
    const { own40, own100 } = own.problems.value;
    return [saysSide('A', a, temp, s), second, own40, own100].filter(Boolean).join(' ');
  },
};
