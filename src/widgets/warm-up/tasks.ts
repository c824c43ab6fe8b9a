import { crackStop } from '../../simulation/choices/number.ts';
import { format } from '../../quantity/print.ts';
import { temperature, temperatureRise } from '../../quantity/quantities.ts';
import type { TaskSpec } from '../../simulation/sim-spec.ts';
import { makeWarmUp, OUTSIDE, START, type WarmUpGivens, type WarmUpModel } from './model.ts';
import { spoken } from './words.ts';

type Task = TaskSpec<WarmUpGivens, WarmUpModel>;

/** The model at a state, for the numbers in the words. */
const at = (state: Partial<WarmUpGivens>): WarmUpModel => {
  const model = makeWarmUp();
  model.apply({ ...START, ...state });
  return model;
};
const minuteOf = (model: WarmUpModel): number | null => {
  const found = model.shows.value;
  return found.when === 'at' ? found.minute : null;
};
/** The time a shop can spare for a test drive [min]. */
const SPARE = 15;
/** Wider than one step of the slider in either system [°C]. */
const NEAR = 2;

const twoHairs: Partial<WarmUpGivens> = { ...START, crack: 0.16 };
const quick: Task = {
  id: 'quick',
  words: (system) => {
    const lets = at(twoHairs).letsGo.value;
    const temp = lets.kind === 'at' ? format(lets.tempC, temperature, system) : '';
    return `A crack that lets go at ${temp}. Driven gently it takes ${spoken(minuteOf(at(twoHairs)) ?? 0)} to show. You have ${SPARE}. Change how the drive begins so that it shows in time.`;
  },
  start: twoHairs,
  controls: ['kind1', 'kind2', 'kind3'],
  done: (model) => {
    const minute = minuteOf(model);
    return minute !== null && minute <= SPARE;
  },
  hint: 'What puts the most heat into the fluid? A converter that slips under load.',
  after: (system) => {
    const fast = at({ ...twoHairs, kind1: 'pulling' });
    return `${spoken(minuteOf(fast) ?? 0)} of stop-and-go pulling do what gentle driving needs ${spoken(minuteOf(at(twoHairs)) ?? 0)} for. Take hills, stops and starts, and watch the temperature reading as you go: above ${format(120, temperature, system)} you are cooking fluid, not testing (common practice, no source). Do it on the road, not against the brake, and let somebody else read while you drive.`;
  },
};

const round: Partial<WarmUpGivens> = { ...START, minutes1: 10, minutes2: 0, minutes3: 0 };
const winter: Task = {
  id: 'winter',
  words: (system) =>
    `A 10-minute test drive, driven gently. Find the coldest day on which it still shows the fault, to ${format(NEAR, temperatureRise, system)}.`,
  start: { ...round, outside: 40 },
  controls: ['outside'],
  done: ({ givens, shows, showsAt }) => {
    const now = shows.value.when;
    const colder = showsAt(Math.max(OUTSIDE.min - 1, givens.outside.value - NEAR)).when;
    return now === 'at' && colder === 'not-on-this-drive';
  },
  hint: 'Go down until it no longer shows, then back up a little.',
  after: (system) => {
    const cold = at({ ...round, outside: -10 });
    return `Below that the same car passes the same drive. At ${format(-10, temperature, system)} the fluid is no warmer than ${format(cold.end.value.tempC, temperature, system)} when you turn back into the yard. “Could not find it” in winter says something about the drive, not about the car. Write down how warm the fluid got.`;
  },
};

const yard: Partial<WarmUpGivens> = {
  ...START,
  crack: 0.12,
  kind1: 'idling',
  kind2: 'idling',
  kind3: 'idling',
};
const idle: Task = {
  id: 'idle',
  words: (system) =>
    `Left idling in the yard for an hour at ${format(START.outside, temperature, system)}, the fluid never gets to where this crack lets go. Find the narrowest crack that an hour of idling does show.`,
  start: yard,
  controls: ['crack'],
  done: (model) => {
    if (minuteOf(model) === null) return false;
    const narrower = at({
      ...yard,
      crack: Math.max(0, model.givens.crack.value - crackStop(model.givens.crack.value)),
    });
    return narrower.shows.value.when === 'not-on-this-drive';
  },
  hint: 'A wider crack lets go cooler. Open it a step at a time.',
  after: (system) => {
    const { tempC } = at(yard).end.value;
    return `Idling gets this fluid to ${format(tempC, temperature, system)} and no further: the engine’s coolant warms it up to there and then holds it there. A crack that lets go hotter than that never shows in the yard. The fault that costs a shop most is that narrow one, and it needs a road.`;
  },
};

const lunch: Task = {
  id: 'lunch',
  words:
    'The customer slips after ten minutes, you do not after fifteen. Same car, same day, same road. Change how warm the fluid starts until it shows within ten minutes.',
  start: { ...START, crack: 0.16, minutes1: 15, minutes2: 0, minutes3: 0 },
  controls: ['above'],
  done: (model) => {
    const minute = minuteOf(model);
    return minute !== null && minute <= 10;
  },
  hint: 'Where does the customer come from when the ten minutes begin?',
  after:
    'The customer had driven to work and stopped for lunch; the fluid was still warm. Your car stood overnight. Ask what the car did in the hour before it slipped, not only in the minutes.',
};

export const tasks: readonly Task[] = [quick, winter, idle, lunch];
