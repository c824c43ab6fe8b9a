import { printer } from '../../quantity/print.ts';
import {
  flow,
  percent,
  pressure,
  speed,
  temperature,
  temperatureRise,
  length,
} from '../../quantity/quantities.ts';
import type { TaskSpec } from '../../simulation/sim-spec.ts';
import {
  COMMANDS,
  makeWhoGoesHungry,
  plantWith,
  readingOf,
  soundReadings,
  type HungryGivens,
  type HungryModel,
  type Reading,
} from './model.ts';
import { COLD_C, FAST_RPM, HOT_C, IDLE_RPM } from './ranges.ts';
import { NOTHING } from './words.ts';

type Task = TaskSpec<HungryGivens, HungryModel>;

const soundParts = { pump: 0, bore: 0, filter: 1 } as const;
const at = (state: Partial<HungryGivens>) => {
  const model = makeWhoGoesHungry();
  model.apply(state);
  return model;
};

/** One stop of the speed control. */
const NEAR_RPM = 50;
const wornHot: HungryGivens = { ...soundParts, rpm: IDLE_RPM, temp: HOT_C, pump: 30 };
const speedUp: Task = {
  id: 'speed',
  words: (system) => {
    const print = printer(system);
    const { line } = at(wornHot).now.value;
    return `A worn pump, hot, at idle: the line has ${print(line, pressure)} of ${print(COMMANDS.line, pressure)}. Bring the engine up to the lowest speed at which the pump feeds the line again.`;
  },
  start: wornHot,
  controls: ['rpm'],
  done: ({ now, fedFrom, givens }) => {
    const from = fedFrom.value;
    return now.value.lineAtCommand && from.kind === 'at' && givens.rpm.value - from.rpm <= NEAR_RPM;
  },
  hint: 'Go up in steps of 50. Watch for the line to stop rising, and for something to be left over.',
  after: (system) => {
    const print = printer(system);
    const from = at(wornHot).fedFrom.value;
    const rpm = from.kind === 'at' ? from.rpm : 0;
    const idle = at(wornHot).now.value.flows.slip;
    const fast = at({ ...wornHot, rpm: FAST_RPM }).now.value.flows.slip;
    return `From ${print(rpm, speed)} up. What slips back through the pump goes with pressure, not with speed: ${print(idle, flow)} at idle, ${print(fast, flow)} at ${print(FAST_RPM, speed)} with the line full. At idle that is half of what it draws; fast, about a fifth. So wear shows hot at idle and hides as you rev it.`;
  },
};

/** [°C] past the point where nothing is left. */
const NEAR_C = 3;
const soundIdle: HungryGivens = { ...soundParts, rpm: IDLE_RPM, temp: 90 };
const runDry: Task = {
  id: 'run-dry',
  words: (system) =>
    `A good transmission now, at idle. Warm it until nothing is left for converter, cooler and lubrication, and stop within ${printer(system)(NEAR_C, temperatureRise)} past that point.`,
  start: soundIdle,
  controls: ['temp'],
  done: ({ now, dryFrom, givens }) => {
    const dry = dryFrom.value;
    return now.value.flows.leftOver < NOTHING && dry !== null && givens.temp.value - dry <= NEAR_C;
  },
  hint: 'Watch the last block of the right-hand column. It goes before the line moves.',
  after: (system) => {
    const print = printer(system);
    const dry = at(soundIdle).dryFrom.value ?? Number.NaN;
    const there = readingOf(plantWith(soundParts), Math.ceil(dry), IDLE_RPM);
    return `At ${print(dry, temperature)} even a good pump at idle gives nothing away. The line is just starting to sag and the clutch still has ${print(there.clutch, pressure)}. Wear does not change who goes first. It makes it happen cooler.`;
  },
};

/** How near a reading of the car is near enough. */
const near = (value: number, target: number, share: number): boolean =>
  Math.abs(value - target) <= share * target;
const soundIn = (reading: Reading, sound: Reading): boolean =>
  near(reading.line, sound.line, 0.01) && near(reading.flows.leftOver, sound.flows.leftOver, 0.05);

/** Car A: made with the filter at 30 times; only its readings are told. */
const clogged = plantWith({ ...soundParts, filter: 30 });
const carA = {
  hotIdle: readingOf(clogged, HOT_C, IDLE_RPM),
  coldFast: readingOf(clogged, COLD_C, FAST_RPM),
};
const coldFast: HungryGivens = { ...soundParts, rpm: FAST_RPM, temp: COLD_C };
const readA: Task = {
  id: 'car-a',
  words: (system) => {
    const print = printer(system);
    return `Car A. Hot at idle all is well: line ${print(carA.hotIdle.line, pressure)}, ${print(carA.hotIdle.flows.leftOver, flow)} to the cooler. Cold at ${print(FAST_RPM, speed)} the pump howls and only ${print(carA.coldFast.flows.leftOver, flow)} goes to the cooler, where a good one sends ${print(soundReadings.coldFast.flows.leftOver, flow)}. Wear the pump or clog the filter until both readings match (within a tenth).`;
  },
  start: coldFast,
  controls: ['pump', 'filter'],
  done: ({ twoReadings }) => {
    const { hotIdle, coldFast: fast } = twoReadings.value;
    return (
      soundIn(hotIdle, carA.hotIdle) && near(fast.flows.leftOver, carA.coldFast.flows.leftOver, 0.1)
    );
  },
  hint: 'Both readings stand further down, under “Two readings”. Pump wear shows in the hot one. What shows only in the cold one?',
  after: (system) => {
    const print = printer(system);
    return `The filter, at about thirty times a clean one. Stiff cold fluid will not go through it, and the faster the pump wants it, the more is missing. Hot and slow it passes all that idle asks. A leak does the opposite. (In this model the cold line keeps its pressure even so, ${print(carA.coldFast.line, pressure)}: stiff fluid hardly leaks, so the little that comes is enough. Who runs short is the cooler and lubrication. The howl is the pump drawing bubbles.)`;
  },
};

/** Car B, by how far its pump is worn [%]. */
const CAR_B_PUMP = 25;
const wornPlant = plantWith({ ...soundParts, pump: CAR_B_PUMP });
const carB = {
  hotIdle: readingOf(wornPlant, HOT_C, IDLE_RPM),
  coldFast: readingOf(wornPlant, COLD_C, FAST_RPM),
};
const readB: Task = {
  id: 'car-b',
  words: (system) => {
    const print = printer(system);
    return `Car B. Cold at ${print(FAST_RPM, speed)} it sends ${print(carB.coldFast.flows.leftOver, flow)} to the cooler, near enough what a good one sends. Hot at idle nothing goes there and the line has ${print(carB.hotIdle.line, pressure)}. Match both readings again.`;
  },
  start: { ...soundParts, rpm: IDLE_RPM, temp: HOT_C, filter: 30 },
  controls: ['pump', 'filter'],
  done: ({ twoReadings }) => {
    const { hotIdle, coldFast: fast } = twoReadings.value;
    return (
      near(hotIdle.line, carB.hotIdle.line, 0.05) &&
      near(fast.flows.leftOver, carB.coldFast.flows.leftOver, 0.05)
    );
  },
  hint: 'The filter you found on car A has no place here. Take it back to clean first.',
  after: (system) => {
    const print = printer(system);
    const bore = readingOf(plantWith({ ...soundParts, bore: 0.12 }), HOT_C, IDLE_RPM);
    return `The pump, about ${print(CAR_B_PUMP, percent)} worn. Hot at idle bad, cold and fast good: a leak. Two readings told it from the filter. They do not tell it from every other leak: a regulator bore worn by ${print(0.12, length)} also leaves the line at ${print(bore.line, pressure)} hot at idle. For that you need the next test.`;
  },
};

export const tasks: readonly Task[] = [speedUp, runDry, readA, readB];
