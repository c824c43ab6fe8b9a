import { computed, signal } from '@preact/signals';
import {
  applyFaults,
  faultSeverity,
  fluidClasses,
  commandsAt,
  litresPerMinute,
  makeFluid,
  revPerSecond,
  solveSteady,
  training,
  type Circuit,
  type FluidClass,
  type Plant,
} from '../../engine/index.ts';
import type { SimModel } from '../../simulation/sim-spec.ts';
import { holdMap, letsGo, type Margin } from './hold-map.ts';
import type { Required } from '../../simulation/choices/required.ts';
import { needed } from './needed.ts';
import { COLD_C, SWEEP_TEMPS } from './ranges.ts';

export type PressureGivens = {
  /** [°C] */
  temp: number;
  /** Height of the crack in the transfer seal [mm] */
  crack: number;
  /** Engine speed [rpm] */
  rpm: number;
  required: Required;
  circuit: Circuit;
  point: keyof Plant['testPoints'];
  fluid: FluidClass;
};

const START: PressureGivens = {
  temp: 100,
  crack: 0.16,
  rpm: training.testPoints.idle.engineRpm,
  required: 'take-off',
  circuit: 'forward',
  point: 'idle',
  fluid: 'low-viscosity',
};

/** One state as the pictures want it: kPa, L/min, N m. */
export interface Reading {
  readonly line: number;
  readonly lineAtCommand: boolean;
  readonly clutch: number;
  readonly torque: number;
  /** How far the feed valve is open, 0 to 1. */
  readonly feedOpen: number;
  readonly flows: {
    readonly intake: number;
    readonly slip: number;
    readonly delivered: number;
    readonly clearances: number;
    readonly feed: number;
    readonly crack: number;
    readonly rings: number;
    /** Solenoid bleeds and the lubrication that hangs on the line. */
    readonly bleed: number;
    /** Piston seal, open port, regulator bore: nil with this fault, and counted so that the sum is whole. */
    readonly other: number;
    readonly leftOver: number;
  };
}

/** Of the crack alone; the rest of the transmission is healthy. */
const plantWith = (crackMm: number) =>
  applyFaults(training, {
    transferSeal: { severity: faultSeverity('transferSeal', crackMm) },
  });

export function makeClutchPressure() {
  const givens = {
    temp: signal(START.temp),
    crack: signal(START.crack),
    rpm: signal(START.rpm),
    required: signal<Required>(START.required),
    circuit: signal<Circuit>(START.circuit),
    point: signal<PressureGivens['point']>(START.point),
    fluid: signal<FluidClass>(START.fluid),
  };
  const apply = (partial: Partial<PressureGivens>) => {
    for (const [key, value] of Object.entries(partial)) {
      (givens[key as keyof PressureGivens] as { value: unknown }).value = value;
    }
  };

  const fluid = computed(() => makeFluid(fluidClasses[givens.fluid.value]));
  const plant = computed(() => plantWith(givens.crack.value));
  const healthyPlant = plantWith(0);

  // Reads every given but crack and temperature, so whatever is built on it alone rests while those move.
  const solve = (of: ReturnType<typeof plantWith>, tempC: number) => {
    const name = givens.circuit.value;
    // Reverse is boosted.
    const { line, clutch } = commandsAt(of, givens.point.value, name);
    const state = solveSteady({
      plant: of,
      fluid: fluid.value,
      tempC,
      engineSpeed: revPerSecond(givens.rpm.value),
      lineCommand: line,
      clutchCommand: clutch,
      applied: [name],
    });
    const circuit = state.circuits[name];
    if (circuit === undefined) throw new Error(`The ${name} circuit was applied and is missing.`);
    return { state, circuit };
  };
  const pressureAt = (of: ReturnType<typeof plantWith>, tempC: number): number =>
    solve(of, tempC).circuit.pressure / 1e3;
  const sweep = (of: ReturnType<typeof plantWith>): readonly number[] =>
    SWEEP_TEMPS.map((tempC) => pressureAt(of, tempC));

  const reading = (tempC: number): Reading => {
    const { state, circuit } = solve(plant.value, tempC);
    const { rings, transferSeal, pistonSeal, hardLip, openPort } = circuit.parts;
    const command = commandsAt(plant.value, givens.point.value, givens.circuit.value).clutch;
    const lmin = litresPerMinute;
    return {
      line: state.linePressure / 1e3,
      lineAtCommand: state.lineAtCommand,
      clutch: circuit.pressure / 1e3,
      torque: circuit.holds,
      // The valve's own law (see feedFlow): wide open once the clutch is one band short of its command.
      feedOpen: Math.min(1, (command - circuit.pressure) / plant.value.feed.band),
      flows: {
        intake: lmin(state.pumpIntake),
        slip: lmin(state.pumpSlip),
        delivered: lmin(state.pumpFlow),
        clearances: lmin(state.clearances),
        feed: lmin(circuit.feed),
        crack: lmin(transferSeal),
        rings: lmin(rings),
        bleed: lmin(state.bleed),
        other: lmin(pistonSeal + hardLip + openPort + state.regulatorLoss),
        leftOver: lmin(state.leftOver),
      },
    };
  };

  const need = computed(() => needed[givens.required.value]);
  const margin: Margin = (crackMm, tempC) =>
    pressureAt(plantWith(crackMm), tempC) - need.value.pressure;
  const now = computed(() => reading(givens.temp.value));
  return {
    givens,
    apply,
    reset: () => apply(START),
    need,
    now,
    cold: computed(() => reading(COLD_C)),
    holds: computed(() => now.value.clutch >= need.value.pressure),
    cracked: computed(() => sweep(plant.value)),
    healthy: computed(() => sweep(healthyPlant)),
    letsGo: computed(() => letsGo(margin, givens.crack.value)),
    map: computed(() => holdMap(margin)),
    commands: computed(() => {
      const { line, clutch } = commandsAt(training, givens.point.value, givens.circuit.value);
      return { line: line / 1e3, clutch: clutch / 1e3 };
    }),
    /** Clutch pressure over need [kPa] for another crack at the temperature chosen. */
    marginWith: (crackMm: number) => margin(crackMm, givens.temp.peek()),
  } satisfies SimModel<PressureGivens> & Record<string, unknown>;
}
export type PressureModel = ReturnType<typeof makeClutchPressure>;
