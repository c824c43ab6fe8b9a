import type { DriveKind } from '../../engine/index.ts';
import { hairs } from '../../quantity/hairs.ts';
import { format } from '../../quantity/print.ts';
import { length, temperature, temperatureRise, minutes } from '../../quantity/quantities.ts';
import { CRACK } from '../../simulation/choices/number.ts';
import type { ControlSpec, NumberSpec, SimSpec } from '../../simulation/sim-spec.ts';
import {
  ABOVE,
  makeWarmUp,
  MINUTES,
  OUTSIDE,
  START,
  type WarmUpGivens,
  type WarmUpModel,
} from './model.ts';
import { says, spoken } from './words.ts';

const kindOptions: readonly { value: DriveKind; words: string }[] = [
  { value: 'idling', words: 'Idling' },
  { value: 'gentle', words: 'Gentle' },
  { value: 'pulling', words: 'Pulling' },
];
const lasting = (key: NumberSpec<WarmUpGivens>['key'], which: string) =>
  ({
    kind: 'number',
    key,
    label: `${which}, how long`,
    quantity: minutes,
    ...MINUTES,
    words: (value) => (value === 0 ? 'left out' : ''),
  }) as const satisfies NumberSpec<WarmUpGivens>;

const controls: readonly ControlSpec<WarmUpGivens>[] = [
  {
    kind: 'number',
    key: 'outside',
    label: 'Outside',
    quantity: temperature,
    ...OUTSIDE,
  },
  {
    kind: 'number',
    key: 'crack',
    label: 'Crack in the transfer seal',
    quantity: length,
    ...CRACK,
    words: hairs,
  },
  { kind: 'choice', key: 'kind1', label: 'First', options: kindOptions },
  lasting('minutes1', 'First'),
  { kind: 'choice', key: 'kind2', label: 'Then', options: kindOptions },
  lasting('minutes2', 'Then'),
  { kind: 'choice', key: 'kind3', label: 'At last', options: kindOptions },
  lasting('minutes3', 'At last'),
  {
    kind: 'number',
    key: 'above',
    label: 'Fluid at the start, above outside',
    quantity: temperatureRise,
    ...ABOVE,
    words: (value) => (value === 0 ? 'stood overnight' : 'still warm'),
  },
  {
    kind: 'choice',
    key: 'required',
    label: 'The clutch has to',
    options: [
      { value: 'idle', words: 'Stand in gear', note: 'engine at 700 rpm' },
      { value: 'take-off', words: 'Take off', note: 'engine up to 1500 rpm, car not yet moving' },
    ],
  },
];

const start: WarmUpGivens = {
  ...START,
  crack: 0.16,
  minutes1: 0,
  minutes2: 0,
  minutes3: 0,
};
const end = { minutes1: 10 };
const after = makeWarmUp();
after.apply({ ...start, ...end });
const { letsGo, end: driven } = after;
const goesAt = letsGo.value.kind === 'at' ? letsGo.value.tempC : Number.NaN;
const gentle = makeWarmUp();
gentle.apply({ ...START, crack: 0.16 });
const found = gentle.shows.value;
const hour = found.when === 'at' ? found.minute : Number.NaN;

export const sim: SimSpec<WarmUpGivens, WarmUpModel> = {
  id: 'warm-up',
  title: 'When will it let go?',
  linkVersion: 1,
  controls,
  predict: {
    question: (system) =>
      `The customer says: it slips when hot. The crack, ${format(0.16, length, system)}, lets go at ${format(goesAt, temperature, system)}. The car stood overnight at ${format(START.outside, temperature, system)}. You drive it gently for ${spoken(end.minutes1)}. What do you find?`,
    options: [
      {
        id: 'shows',
        words: 'It slips. After ten minutes on the road any car is hot.',
        why: (system) =>
          `The engine may be by then. The fluid warms by its own losses and by the engine’s coolant in the cooler, and it comes after both. It has got to ${format(driven.value.tempC, temperature, system)}.`,
      },
      {
        id: 'close',
        words: 'It just holds. Five minutes more and it would slip.',
        why: (system) =>
          `It is a long way off: ${format(driven.value.tempC, temperature, system)} of ${format(goesAt, temperature, system)}. The warmer the fluid, the slower it warms, since it gives off more heat. Driven like this it takes ${spoken(hour)}.`,
      },
      {
        id: 'far',
        words: 'Nothing. The fluid is not nearly warm enough.',
        why: (system) =>
          `${format(driven.value.tempC, temperature, system)} after ${spoken(end.minutes1)}; the crack lets go at ${format(goesAt, temperature, system)}, and driven like this that takes ${spoken(hour)}. A short test drive proves nothing about a hot fault. Note the fluid temperature, not the minutes.`,
      },
    ],
    start,
    end,
    runLabel: 'Drive it',
    outcome: (model) => {
      const { when } = model.shows.value;
      const later = makeWarmUp();
      later.apply({ ...start, minutes1: end.minutes1 + 5 });
      const option = when === 'at' ? 'shows' : later.shows.value.when === 'at' ? 'close' : 'far';
      return {
        option,
        words: (system) =>
          `Fluid at ${format(model.end.value.tempC, temperature, system)} after ${spoken(model.end.value.minute)}. Lets go at ${format(goesAt, temperature, system)}.`,
      };
    },
  },
  says,
};
