import { hairs } from '../../ui/hairs.ts';
import { length, pressure, temperature, type UnitSystem } from '../../ui/quantity.ts';
import type { SimSpec } from '../../simulation/sim-spec.ts';
import { COOL_C, HOT_C, type GapOrHoleGivens, type GapOrHoleModel } from './model.ts';
import {
  sayGrowth,
  sayLaw,
  sayLeak,
  sayPressure,
  sayReynolds,
  sayTemp,
  sayTimes,
} from './words.ts';

const cool = (system: UnitSystem): string => sayTemp(COOL_C, system);
const hot = (system: UnitSystem): string => sayTemp(HOT_C, system);

/** Above this the two did not "grow alike". */
const CLEARLY_MORE = 1.5;
const ONE_HAIR = { height: 0.07, pressure: 400, fluid: 'low-viscosity' } as const;

export const gapOrHoleSim: SimSpec<GapOrHoleGivens, GapOrHoleModel> = {
  id: 'gap-or-hole',
  title: 'Thin crack or drilled hole',
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
    {
      kind: 'number',
      key: 'height',
      label: 'Crack, how far open',
      quantity: length,
      min: 0.02,
      max: 0.4,
      step: 0.01,
      words: hairs,
    },
    {
      kind: 'number',
      key: 'pressure',
      label: 'Pressure behind both',
      quantity: pressure,
      min: 100,
      max: 1000,
      step: 10,
    },
    {
      kind: 'choice',
      key: 'fluid',
      label: 'Fluid',
      options: [
        { value: 'low-viscosity', words: 'Low-viscosity, 29.6 and 6.0 cSt' },
        { value: 'standard', words: 'Standard, 35.0 and 7.3 cSt' },
        { value: 'ultra-low', words: 'Ultra-low, 18.5 and 4.4 cSt' },
      ],
      as: 'select',
    },
  ],
  predict: {
    question: (s) =>
      `At ${cool(s)} a crack that stands open by one hair and a drilled hole leak exactly the same. Warm the fluid to ${hot(s)}. Which leak grows more?`,
    options: [
      {
        id: 'crack',
        words: 'The crack’s leak grows more',
        why: 'In a thin crack the fluid rubs along two walls all the way through. Thin fluid rubs less, so more gets past. The hole has next to no wall.',
      },
      {
        id: 'hole',
        words: 'The hole’s leak grows more',
        why: 'A hole looks like the easier way out. But its pressure goes into getting the fluid up to speed, and that takes the same push thick or thin.',
      },
      {
        id: 'alike',
        words: 'Both grow alike',
        why: 'Same pressure, same fluid, so it sounds fair. But only the crack makes the fluid rub, so only the crack feels how thick it is.',
      },
    ],
    start: { temp: COOL_C, ...ONE_HAIR },
    end: { temp: HOT_C },
    runLabel: 'Run it hot',
    outcome: ({ crack, hole, growth }) => {
      const apart = growth.value.crack / growth.value.hole;
      return {
        option: apart > CLEARLY_MORE ? 'crack' : apart < 1 / CLEARLY_MORE ? 'hole' : 'alike',
        words: (s) =>
          `The crack leaks ${sayLeak(crack.value.leak, s)}, ${sayTimes(growth.value.crack)} what it leaked at ${cool(s)}. The hole leaks ${sayLeak(hole.value, s)}, ${sayTimes(growth.value.hole)}.`,
      };
    },
  },
  tasks: [
    {
      id: 'eight-times',
      words: (s) =>
        `Find a crack that leaks at least 8 times more at ${hot(s)} than at ${cool(s)}.`,
      start: { temp: HOT_C, height: 0.25, pressure: 400, fluid: 'low-viscosity' },
      controls: ['height'],
      done: ({ growth }) => growth.value.crack >= 8,
      hint: 'Wide cracks behave like holes. Go the other way.',
      after:
        'Only a thin crack does that: nearly all its pressure is spent rubbing. It hides in a cold shop and shows on a hot road.',
    },
    {
      id: 'like-a-hole',
      words: (s) =>
        `Now one that behaves like the hole: less than 1.5 times as much at ${hot(s)} as at ${cool(s)}.`,
      start: { temp: HOT_C, height: 0.07, pressure: 600, fluid: 'low-viscosity' },
      controls: ['height', 'pressure'],
      done: ({ growth }) => growth.value.crack < CLEARLY_MORE,
      hint: 'Far from thin: five hairs or more. More pressure helps too.',
      after:
        'Wide open, hardly any pressure goes into rubbing. This one leaks hot and cold alike, as a missing plug does.',
    },
    {
      id: 'five-to-one',
      words:
        'Find the temperature at which the one-hair crack leaks about 5 times what the hole leaks.',
      start: { temp: COOL_C, ...ONE_HAIR },
      controls: ['temp'],
      done: ({ crack, hole }) => {
        const apart = crack.value.leak / hole.value;
        return apart >= 4.7 && apart <= 5.3;
      },
      hint: (s) => `They part at ${cool(s)}. Warm it step by step and compare the two numbers.`,
      after: (s) =>
        `The crack passes the hole at ${cool(s)} and pulls away with every degree. The hole hardly moves.`,
    },
    {
      id: 'end-of-law',
      words:
        'Every law has an end. The Reynolds number tells how wild a flow is: low, it slides in layers; above 2000, it tumbles. Find a state where the crack is above 2000.',
      start: { temp: COOL_C, ...ONE_HAIR },
      controls: ['temp', 'height', 'pressure'],
      done: ({ crack }) => !crack.value.laminarLawValid,
      hint: 'Fast flow and thin fluid raise it: wider, hotter, more pressure.',
      after:
        'Up there the flow tumbles instead of sliding, and the real crack leaks less than the line says. The words under the picture warn you.',
    },
  ],
  says: (model, s) => {
    const { crack, hole, givens } = model;
    const { leak, reynolds, laminarLawValid } = crack.value;
    const end = laminarLawValid
      ? ''
      : ` Reynolds number ${sayReynolds(reynolds)}, ${sayLaw(crack.value)}.`;
    return `At ${sayTemp(givens.temp.value, s)} and ${sayPressure(givens.pressure.value, s)} the crack leaks ${sayLeak(leak, s)}, the hole ${sayLeak(hole.value, s)}. ${sayGrowth(model, s)}${end}`;
  },
};
