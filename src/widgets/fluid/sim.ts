import {
  FLUID_LIMITS,
  fluidClasses,
  findRoot,
  kinematicCSt,
  makeFluid,
} from '../../engine/index.ts';
import {
  kinematicViscosity,
  printNumber,
  temperature,
  type UnitSystem,
} from '../../ui/quantity.ts';
import type { SimSpec } from '../../simulation/sim-spec.ts';
import {
  COOL_C,
  DEFAULT_DENSITY,
  FLUID_NAMES,
  HOT_C,
  indexOf,
  type FluidGivens,
  type FluidModel,
  type FluidPick,
  type Thickness,
} from './model.ts';
import { OWN_LABELS } from './own-fluid.ts';
import { density, sayCst, sayIndex, saySide, sayTemp, sayTimes } from './words.ts';

const picks: readonly FluidPick[] = ['low-viscosity', 'standard', 'ultra-low', 'own'];
const options = picks.map((value) => ({
  value,
  words:
    value === 'own'
      ? 'Your own, by its two numbers'
      : `${FLUID_NAMES[value]}, ${printNumber(fluidClasses[value].kv40CSt, 1)} and ${printNumber(fluidClasses[value].kv100CSt, 1)} cSt`,
}));

/** The two the tasks are about, for the numbers in their closing words. */
const low = makeFluid(fluidClasses['low-viscosity']);
const standard = makeFluid(fluidClasses.standard);
const thinnerThanCool = (tempC: number): number =>
  kinematicCSt(low, COOL_C) / kinematicCSt(low, tempC);
const reaches = (times: number): number =>
  findRoot((tempC) => thinnerThanCool(tempC) - times, COOL_C, 140).root;
const [twice, fiveTimes, tenTimes] = [reaches(2), reaches(5), reaches(10)];
const linesCross = findRoot(
  (tempC) => kinematicCSt(standard, tempC) - kinematicCSt(low, tempC),
  -30,
  COOL_C,
).root;

const cool = (system: UnitSystem): string => sayTemp(COOL_C, system);
const hot = (system: UnitSystem): string => sayTemp(HOT_C, system);

const thinner = (one: Thickness | null, other: Thickness | null): boolean =>
  one !== null && other !== null && one.kinematic < other.kinematic;

/** Where "about 2" gives way to "about 5", and that to "10 or more". */
const FIVE_FROM = 3.2;
const TEN_FROM = 7.1;

export const fluidSim: SimSpec<FluidGivens, FluidModel> = {
  id: 'fluid',
  title: 'How thin does it get?',
  linkVersion: 1,
  controls: [
    {
      kind: 'number',
      key: 'temp',
      label: 'Fluid temperature',
      quantity: temperature,
      min: -30,
      max: 140,
      step: 1,
    },
    { kind: 'choice', key: 'fluidA', label: 'Fluid A, solid line', options, as: 'select' },
    { kind: 'choice', key: 'fluidB', label: 'Fluid B, dotted line', options, as: 'select' },
    {
      kind: 'number',
      key: 'own40',
      label: `Your own fluid, ${OWN_LABELS.own40}`,
      quantity: kinematicViscosity,
      min: FLUID_LIMITS.kv40CSt.min,
      max: FLUID_LIMITS.kv40CSt.max,
      step: 0.1,
    },
    {
      kind: 'number',
      key: 'own100',
      label: `Your own fluid, ${OWN_LABELS.own100}`,
      quantity: kinematicViscosity,
      min: FLUID_LIMITS.kv100CSt.min,
      max: FLUID_LIMITS.kv100CSt.max,
      step: 0.1,
    },
    {
      kind: 'number',
      key: 'own15',
      label: 'Your own fluid, density at 15 °C (59 °F)',
      quantity: density,
      min: 801,
      max: 1000,
      step: 1,
      words: (value) => (value === DEFAULT_DENSITY ? 'taken where a sheet does not say' : ''),
    },
    {
      kind: 'flag',
      key: 'log',
      label: 'Upright scale',
      on: 'each line up is ten times more',
      off: 'even steps',
    },
  ],
  predict: {
    question: (s) => `Warm this fluid from ${cool(s)} to ${hot(s)}. How much thinner does it get?`,
    options: [
      {
        id: 'two',
        words: 'About 2 times thinner',
        why: (s) =>
          `Two times is what the first few degrees do: it is there by ${sayTemp(twice, s)}. The rest of the way to ${hot(s)} thins it much more.`,
      },
      {
        id: 'five',
        words: 'About 5 times thinner',
        why: (s) =>
          `Five times is reached on the way, near ${sayTemp(fiveTimes, s)}. It goes on thinning from there, only in smaller steps.`,
      },
      {
        id: 'ten',
        words: '10 times thinner or more',
        why: `From ${sayCst(kinematicCSt(low, COOL_C))} to ${sayCst(kinematicCSt(low, HOT_C))} is ${sayTimes(thinnerThanCool(HOT_C))} times. Nothing is wrong with the fluid: every fluid does this, and the gearbox has to live with it.`,
      },
    ],
    start: { temp: COOL_C, fluidA: 'low-viscosity', fluidB: 'standard', log: false },
    end: { temp: HOT_C },
    runLabel: 'Warm it up',
    outcome: ({ a }) => {
      const times = a.times.value ?? 1;
      const [from, to] = [a.cool.value, a.now.value];
      return {
        option: times < FIVE_FROM ? 'two' : times < TEN_FROM ? 'five' : 'ten',
        words: (s) =>
          `${sayTimes(times)} times thinner: ${from ? sayCst(from.kinematic) : ''} at ${cool(s)}, ${to ? sayCst(to.kinematic) : ''} at ${hot(s)}.`,
      };
    },
  },
  tasks: [
    {
      id: 'ten-times',
      words: (s) => `Find the temperature where fluid A is 10 times thinner than at ${cool(s)}.`,
      start: { temp: COOL_C, fluidA: 'low-viscosity', fluidB: 'standard', log: false },
      controls: ['temp'],
      done: ({ a }) => {
        const times = a.times.value ?? 0;
        return times >= 9.5 && times <= 10.5;
      },
      hint: (s) =>
        `Warm it, and watch the words under the picture. You are looking for 10 times thinner than at ${cool(s)}.`,
      after: (s) =>
        `Ten times thinner at about ${sayTemp(tenTimes, s)}. That is an ordinary working temperature, so a gap meets fluid this thin every day.`,
    },
    {
      id: 'cross',
      words: (s) =>
        `One of these classes is the thicker of two at ${hot(s)} and yet the thinner of the same two in deep cold. Make it fluid A, make its rival fluid B, and set a temperature that shows it.`,
      start: { temp: COOL_C, fluidA: 'low-viscosity', fluidB: 'ultra-low', log: true },
      controls: ['temp', 'fluidA', 'fluidB'],
      done: ({ a, b }) => thinner(a.now.value, b.now.value) && thinner(b.hot.value, a.hot.value),
      hint: (s) =>
        `The line that falls less steeply is the one. Put standard against low-viscosity, then go below ${sayTemp(-20, s)}.`,
      after: (s) =>
        `The two lines cross near ${sayTemp(linesCross, s)}. Standard has the higher viscosity index, ${sayIndex(indexOf(standard))} against ${sayIndex(indexOf(low))}: it changes less with heat, both ways.`,
    },
    {
      id: 'higher-index',
      words: `Fluid A is your own. Type two numbers that give it a higher viscosity index than fluid B has, ${sayIndex(indexOf(low))}.`,
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
      done: ({ a, b, givens }) =>
        givens.fluidA.value === 'own' && (a.index.value ?? -1e9) > (b.index.value ?? 1e9),
      hint: 'A higher index means less change. Bring the two numbers closer together: raise the hot one, or lower the cool one.',
      after:
        'Closer together is a higher index, and a flatter line. It says nothing about how thick a fluid is, only how little it changes.',
    },
  ],
  says: ({ a, b, givens }, system) => {
    const first = `At ${sayTemp(givens.temp.value, system)}: ${saySide(a, system)}.`;
    return givens.fluidA.value === givens.fluidB.value
      ? `${first} A and B are the same fluid.`
      : `${first} ${saySide(b, system)}.`;
  },
};
