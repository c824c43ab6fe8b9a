import { HOT_C } from '../../car/cold-and-hot.ts';
import { words as names } from '../../car/names/words.en.ts';
import { letsGoAtC } from '../../car/lets-go.ts';
import { makeCar } from '../../car/car.ts';
import { readingOf } from '../../car/readings.ts';
import { hairs } from '../../quantity/hairs/hairs.ts';
import { printer } from '../../quantity/print.ts';
import {
  length,
  pressure,
  speed,
  temperature,
  temperatureRise,
} from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { CRACK, crackStop } from '../../simulation/choices/number.ts';
import { needed } from '../../simulation/required/control.ts';
import { aim, judged } from '../../simulation/judged.ts';
import type { TaskSpec } from '../../simulation/sim-spec.ts';
import { told } from '../../simulation/told.ts';
import type { PressureGivens, PressureModel } from './model.ts';
import { at, REFERENCE } from './sim.ts';
import { words } from './task-words.en.ts';

/** How near "where it lets go" is near enough [°C]: wider than a step of the slider in either system. */
const NEAR = 2;
const HOTTEST_C = 120;
const FAST_RPM = 2000;
/** One step of the engine's control [rpm]. */
const STEP_RPM = 50;

const standing: PressureGivens = { ...REFERENCE, temp: 20, required: 'idle' };
const hot: PressureGivens = { ...REFERENCE, temp: HOT_C };
const widestHot: PressureGivens = { ...hot, crack: CRACK.max };
const starved: PressureGivens = { ...REFERENCE, temp: HOTTEST_C };

/** The widest stop of the crack's control that holds hot, and the next, in the steps of the reader's units [mm]. */
function lastThatHolds(system: UnitSystem) {
  const { marginWith } = at(widestHot);
  const step = system === 'us' ? 0.0254 : CRACK.step;
  let stops = 0;
  while (marginWith((stops + 1) * step) >= 0) stops += 1;
  return { holds: stops * step, fails: (stops + 1) * step };
}

const reference = makeCar({ crackMm: REFERENCE.crack });
/** The lowest stop of the engine's control that feeds the line again [rpm]. */
function fedFrom(): number {
  let engineRpm = REFERENCE.rpm;
  while (!readingOf(reference, { tempC: HOTTEST_C, engineRpm }).lineAtCommand) {
    engineRpm += STEP_RPM;
  }
  return engineRpm;
}
const texts = told(words.tasks, (system) => {
  const print = printer(system);
  const { holds, fails } = lastThatHolds(system);
  const short = at(starved);
  return {
    reference: print(REFERENCE.crack, length),
    near: print(NEAR, temperatureRise),
    standsTo: print(letsGoAtC(reference, 'standing'), temperature),
    gentleTo: print(letsGoAtC(reference, 'gentle'), temperature),
    firmTo: print(letsGoAtC(reference, 'firm'), temperature),
    hot: print(HOT_C, temperature),
    holds: print(holds, length),
    fails: print(fails, length),
    hairs: hairs(holds),
    hottest: print(HOTTEST_C, temperature),
    lineShort: print(short.now.value.lineKpa, pressure),
    lineCommand: print(short.commands.value.lineKpa, pressure),
    clutchFast: print(at({ ...starved, rpm: FAST_RPM }).clutch.value.kPa, pressure),
    firm: print(needed['take-off'].kPa, pressure),
    fast: print(FAST_RPM, speed),
    fed: print(fedFrom(), speed),
    highHas: print(at({ ...hot, circuit: 'high' }).clutch.value.kPa, pressure),
  };
});
const { reached } = words;

/** What the clutch has against what it needs, as printed. */
const hasAndNeeds = ({ clutch, need }: PressureModel, system: UnitSystem) => ({
  has: printer(system)(clutch.value.kPa, pressure),
  needs: printer(system)(need.value.kPa, pressure),
});

export const tasks: readonly TaskSpec<PressureGivens, PressureModel>[] = [
  {
    id: 'edge',
    ...texts.edge,
    start: standing,
    controls: ['temp'],
    ...judged((model) => {
      const edge = model.letsGo.value;
      if (edge.kind !== 'at') return null;
      const value = model.givens.temp.value;
      return {
        is: aim({ value, least: edge.tempC, most: edge.tempC + NEAR, near: 10 }),
        reached: (system) =>
          reached.has({
            ...hasAndNeeds(model, system),
            temp: printer(system)(value, temperature),
          }),
      };
    }),
  },
  {
    id: 'widest',
    ...texts.widest,
    start: widestHot,
    controls: ['crack'],
    ...judged((model) => {
      const { givens, holds, marginWith } = model;
      const crack = givens.crack.value;
      const stop = crackStop(crack);
      const wider = (stops: number): boolean =>
        marginWith(Math.min(CRACK.max, crack + stops * stop)) >= 0;
      const is = !holds.value
        ? marginWith(Math.max(0, crack - stop)) >= 0
          ? 'nearly'
          : 'too-high'
        : !wider(1)
          ? 'done'
          : wider(2)
            ? 'too-low'
            : 'nearly';
      return {
        is,
        reached: (system) =>
          reached.withCrack({
            ...hasAndNeeds(model, system),
            crack: printer(system)(crack, length),
          }),
      };
    }),
  },
  {
    id: 'speed',
    ...texts.speed,
    start: starved,
    controls: ['rpm'],
    ...judged(({ now, givens, commands }) => ({
      is: now.value.lineAtCommand ? 'done' : 'too-low',
      reached: (system) => {
        const print = printer(system);
        return reached.line({
          speed: print(givens.rpm.value, speed),
          line: print(now.value.lineKpa, pressure),
          command: print(commands.value.lineKpa, pressure),
        });
      },
    })),
  },
  {
    id: 'high',
    ...texts.high,
    start: hot,
    controls: ['circuit'],
    ...judged((model) => {
      const { givens, holds } = model;
      if (givens.crack.value === 0) return null;
      return {
        is: holds.value ? 'done' : 'not-that',
        reached: (system) =>
          reached.circuit({
            ...hasAndNeeds(model, system),
            circuit: names.circuits[givens.circuit.value],
          }),
      };
    }),
  },
];
