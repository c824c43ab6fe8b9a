import { format, printer } from '../../quantity/print.ts';
import {
  length,
  pressure,
  speed,
  temperature,
  temperatureRise,
} from '../../quantity/quantities.ts';
import type { TaskSpec } from '../../simulation/sim-spec.ts';
import { makeClutchPressure, type PressureGivens, type PressureModel } from './model.ts';
import { needed } from './needed.ts';
import { CRACK, crackStop } from '../../simulation/choices/number.ts';

type Task = TaskSpec<PressureGivens, PressureModel>;

/** Everything said, so that a task never inherits what the one before left behind. */
const idleInForward: Partial<PressureGivens> = {
  rpm: 700,
  required: 'take-off',
  circuit: 'forward',
  point: 'idle',
  fluid: 'low-viscosity',
};
/** The model at a state, for the numbers in the words. */
const at = (state: Partial<PressureGivens>) => {
  const model = makeClutchPressure();
  model.apply({ ...idleInForward, ...state });
  return model;
};

/** How near "where it lets go" is near enough [°C]: wider than a step of the slider in either system. */
const NEAR = 2;

const lettingGo: Partial<PressureGivens> = {
  ...idleInForward,
  temp: 20,
  crack: 0.3,
  required: 'idle',
};
const findEdge: Task = {
  id: 'edge',
  words: (system) =>
    `A crack of ${printer(system)(0.3, length)}, car standing in gear. Warm the fluid until the clutch lets go, and stop within ${format(NEAR, temperatureRise, system)} past that point.`,
  start: lettingGo,
  controls: ['temp'],
  done: ({ givens, letsGo, holds }) => {
    const edge = letsGo.value;
    return !holds.value && edge.kind === 'at' && givens.temp.value - edge.tempC <= NEAR;
  },
  hint: 'Watch the open ring walk along the line. It lets go where the line dips under “stand in gear”.',
  after: (system) => {
    const edge = at(lettingGo).letsGo.value;
    const words =
      edge.kind === 'at' ? printer(system)(edge.tempC, temperature) : 'no temperature offered';
    return `It lets go at ${words}. Below that the car passes any test you give it. A hot fault has a temperature of its own: warm the car to it before you call it good.`;
  },
};

const hotTakeOff: Partial<PressureGivens> = { ...idleInForward, temp: 100, crack: CRACK.max };
const widest: Task = {
  id: 'widest',
  words: (system) =>
    `Fluid at ${printer(system)(100, temperature)}. Find the widest crack with which the car can still take off.`,
  start: hotTakeOff,
  controls: ['crack'],
  done: ({ givens, holds, marginWith }) =>
    holds.value &&
    marginWith(Math.min(CRACK.max, givens.crack.value + crackStop(givens.crack.value))) < 0,
  hint: 'Narrow the crack until it holds. Then go back up one step at a time.',
  after: (system) => {
    const print = printer(system);
    return `With ${print(0.13, length)} it holds, with ${print(0.14, length)} it does not: under two hairs. A split that you can hardly see decides, and leak goes with its width three times over. Look for it with a light and a loupe, and with air.`;
  },
};

const starved: Partial<PressureGivens> = { ...idleInForward, temp: 120, crack: 0.25 };
const speedUp: Task = {
  id: 'speed',
  words: (system) => {
    const print = printer(system);
    const { line } = at(starved).now.value;
    return `At ${print(120, temperature)} line pressure is down to ${print(line, pressure)} too. Speed the engine up until the line is back at its command of ${print(600, pressure)}. Does the clutch come back with it? (Here only. On a car, revving in gear against the brake is a stall test: it cooks the fluid in seconds and the car can leap. Leave it to the maker’s procedure.)`;
  },
  start: starved,
  controls: ['rpm'],
  done: ({ now, holds }) => now.value.lineAtCommand && !holds.value,
  hint: 'Go up in steps and read the line pressure beside the drawing. Past a certain speed it stands still.',
  after: (system) => {
    const print = printer(system);
    const fast = at({ ...starved, rpm: 2000 }).now.value;
    return `The line is back, the clutch is not: ${print(fast.clutch, pressure)} of the ${print(needed['take-off'].pressure, pressure)} it needs, at ${print(2000, speed)} the same as at ${print(900, speed)}. Once the line stands at its command the pump is not the limit any more. What it gives beyond that goes out at the regulator. The feed hole is the limit, and it does not care how fast the pump turns.`;
  },
};

const slipping: Partial<PressureGivens> = { ...idleInForward, temp: 100, crack: 0.25 };
const high: Task = {
  id: 'high',
  words: (system) =>
    `Fluid at ${printer(system)(100, temperature)}, crack ${printer(system)(0.25, length)}: forward slips. Leave the crack alone and find a circuit that holds.`,
  start: slipping,
  controls: ['circuit'],
  done: ({ givens, holds }) => holds.value && givens.crack.value > 0,
  hint: 'Which circuit does not pass through the transfer seal?',
  after: (system) => {
    const print = printer(system);
    const { clutch } = at({ ...slipping, circuit: 'high' }).now.value;
    return `High has ${print(clutch, pressure)}: it does not pass through the transfer seal, so the crack cannot reach it. Forward and reverse slip, high is spared. That pattern points at what the two have in common.`;
  },
};

export const tasks: readonly Task[] = [findEdge, widest, speedUp, high];
