/** The moment in words and in the drawing, and what the run came to. */
import { COLD_C } from '../../car/cold-and-hot.ts';
import { words as states } from '../../car/states/words.en.ts';
import { words as names } from '../../car/words.en.ts';
import type { FaultPlace, Grip, WholeCarState } from '../../drawings/index.ts';
import { ENGAGED_SLIP_RPM, trainingStory, type FaultId } from '../../engine/index.ts';
import { printer } from '../../quantity/print.ts';
import {
  flow,
  pressure,
  roadSpeed,
  seconds,
  speed,
  temperature,
} from '../../quantity/quantities.ts';
import { stateAt } from '../../simulation/traces/controller.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { partings, rowAt, type Run, type WholeCarModel } from './model.ts';
import { words } from './words.en.ts';

const PLACE: Readonly<Record<FaultId, FaultPlace>> = {
  transferSeal: 'seal',
  hardLip: 'piston',
  clutchControl: 'feed',
  sealingRings: 'riser',
  pistonSeal: 'piston',
  pumpWear: 'pump',
  regulatorBore: 'regulator',
  pressureControl: 'regulator',
  filter: 'suction',
  lowFluid: 'sump',
  thinFluid: 'sump',
  feedRestriction: 'feed',
  openPort: 'riser',
  frictionWear: 'plates',
  turbineSensor: 'turbine',
};
/** Full scale of the tints and of the gauge [Pa]. */
const FULL_SCALE = 1e6;
/** Less than this many newton meters squeezes nothing. */
const GRIPS_NM = 1;

function gripAt({ trace }: Run['solved'], i: number): Grip {
  if ((trace.capacity[i] ?? 0) < GRIPS_NM) return 'released';
  return Math.abs(trace.slipRpm[i] ?? 0) > ENGAGED_SLIP_RPM ? 'slips' : 'holds';
}

/** One of the two cars at the moment chosen. */
export function pictured(
  { givens }: WholeCarModel,
  run: Run,
  tempC: number,
  system: UnitSystem,
): WholeCarState {
  const print = printer(system);
  const time = givens.time.value;
  const i = rowAt(run, time);
  const { solved, motion } = run;
  const { trace } = solved;
  const at = (column: Float64Array): number => column[i] ?? 0;
  const state = stateAt(solved.states, time);
  const [line, clutch, wanted] = [trace.linePressure, trace.clutchPressure, trace.clutchCommand];
  return {
    temp: tempC === COLD_C ? 'cold' : 'hot',
    turns: {
      engine: at(motion.engineTurns),
      turbine: at(motion.turbineTurns),
      wheels: at(motion.outputTurns),
    },
    fedL: at(motion.fedL),
    leakedL: at(motion.leakedL),
    leakLmin: at(motion.leakLmin),
    pressures: {
      line: at(line) / FULL_SCALE,
      clutch: at(clutch) / FULL_SCALE,
      wanted: at(wanted) / FULL_SCALE,
    },
    grip: gripAt(solved, i),
    parked: state === 'waiting' || state === 'failSafePark',
    controller: states[state],
    failSafe: state.startsWith('failSafe'),
    fault: givens.severity.value > 0 ? PLACE[givens.fault.value] : null,
    printed: {
      fluid: print(tempC, temperature),
      engine: print(at(trace.engineRpm), speed),
      turbine: print(at(trace.turbineRpm), speed),
      wheels: print(at(trace.vehicleSpeed) * 3.6, roadSpeed),
      line: print(at(line) / 1e3, pressure),
      clutch: print(at(clutch) / 1e3, pressure),
      wanted: print(at(wanted) / 1e3, pressure),
      leak: print(at(motion.leakLmin), flow),
    },
  };
}

/** The sentence under the picture. */
export function says(model: WholeCarModel, system: UnitSystem): string {
  const { givens, cold, hot } = model;
  const print = printer(system);
  const time = givens.time.value;
  const turbine = (run: Run) => print(run.solved.trace.turbineRpm[rowAt(run, time)] ?? 0, speed);
  const clutch = (run: Run) =>
    print((run.solved.trace.clutchPressure[rowAt(run, time)] ?? 0) / 1e3, pressure);
  const last = hot.value.solved.events.findLast((event) => event.time <= time + 1e-6);
  const { states: controller, trace } = hot.value.solved;
  const letGo = stateAt(controller, time);
  // The driver of the story does not lift off when the controller lets the clutch go: the picture would not say why it races.
  const races =
    (letGo === 'failSafePark' || letGo === 'failSafeNeutral') &&
    (trace.throttle[rowAt(hot.value, time)] ?? 0) > 0;
  return [
    ...(model.own.value ? [model.own.value.said] : []),
    words.moment({
      time: print(time, seconds),
      cold: turbine(cold.value),
      coldClutch: clutch(cold.value),
      hot: turbine(hot.value),
      hotClutch: clutch(hot.value),
    }),
    last ? words.last({ event: names.events[last.event] }) : words.nothing,
    ...(races ? [words.footDown] : []),
  ].join(' ');
}

/** Which reading parted first, and when each did. */
export function outcome(model: WholeCarModel) {
  const parted = partings(model);
  const first = Object.entries(parted).reduce((a, b) =>
    (b[1] ?? Infinity) < (a[1] ?? Infinity) ? b : a,
  );
  return {
    option: first[0],
    words: (system: UnitSystem) => {
      const print = printer(system);
      const at = (time: number | null) => print(time ?? trainingStory.end, seconds);
      const { line } = parted;
      return [
        words.parted({
          clutch: at(parted.clutch),
          turbine: at(parted.turbine),
          controller: at(parted.controller),
        }),
        line === null ? words.lines.never : words.lines.raised({ line: at(line) }),
      ].join(' ');
    },
  };
}
