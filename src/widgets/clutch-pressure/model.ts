import { computed } from '@preact/signals';
import { makeCar, type Car } from '../../car/car.ts';
import { COLD_C } from '../../car/cold-and-hot.ts';
import { clutchKpa, readingOf, type Asked } from '../../car/readings.ts';
import {
  commandsAt,
  training,
  type Circuit,
  type FluidClass,
  type Plant,
} from '../../engine/index.ts';
import { needed, type Required } from '../../simulation/required/control.ts';
import { TEMP } from '../../simulation/choices/temperatures.ts';
import { givensFrom } from '../../simulation/givens.ts';
import type { SimModel } from '../../simulation/sim-spec.ts';
import { holdMap, letsGo, type Margin } from './hold-map.ts';

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

/** Sixty points [°C]: under three degrees apart, no corner of a line is lost on a projector. */
export const SWEEP_TEMPS: readonly number[] = Array.from(
  { length: 60 },
  (_, i) => TEMP.min + (i * (TEMP.max - TEMP.min)) / 59,
);

export function makeModel() {
  const { givens, apply, reset } = givensFrom(START);
  /** Reads the fluid, so that what is built on it rests while only the crack or the temperature moves. */
  const carWith = (crackMm: number): Car => makeCar({ crackMm, fluid: givens.fluid.value });
  const car = computed(() => carWith(givens.crack.value));
  const whole = computed(() => carWith(0));
  const asked = computed<Omit<Asked, 'tempC'>>(() => ({
    point: givens.point.value,
    circuit: givens.circuit.value,
    engineRpm: givens.rpm.value,
  }));
  const points = SWEEP_TEMPS.map((tempC) =>
    computed(() => clutchKpa(car.value, { ...asked.value, tempC })),
  );
  const need = computed(() => needed[givens.required.value]);
  const margin: Margin = (crackMm, tempC) =>
    clutchKpa(carWith(crackMm), { ...asked.value, tempC }) - need.value.kPa;
  const commands = computed(() => {
    const { line, clutch } = commandsAt(training, givens.point.value, givens.circuit.value);
    return { lineKpa: line / 1e3, clutchKpa: clutch / 1e3 };
  });
  const now = computed(() => readingOf(car.value, { ...asked.value, tempC: givens.temp.value }));
  const clutch = computed(() => now.value.clutches[givens.circuit.value]);
  return {
    givens,
    apply,
    reset,
    need,
    commands,
    now,
    /** The clutch of the circuit chosen, as it is now. */
    clutch,
    cold: computed(() => readingOf(car.value, { ...asked.value, tempC: COLD_C })),
    holds: computed(() => clutch.value.kPa >= need.value.kPa),
    /** How far the feed valve is open, 0 to 1: wide open once the clutch is one band short of its command. */
    feedOpen: computed(() =>
      Math.min(1, ((commands.value.clutchKpa - clutch.value.kPa) * 1e3) / training.feed.band),
    ),
    cracked: computed(() => points.map(({ value }) => value)),
    /** The line up to a temperature: half a line needs half the solves. */
    crackedTo: (tempC: number) =>
      points.map((point, i) => ((SWEEP_TEMPS[i] ?? 0) <= tempC ? point.value : null)),
    healthy: computed(() =>
      SWEEP_TEMPS.map((tempC) => clutchKpa(whole.value, { ...asked.value, tempC })),
    ),
    letsGo: computed(() => letsGo(margin, givens.crack.value)),
    map: computed(() => holdMap(margin)),
    /** Clutch pressure over need [kPa] for another crack at the temperature chosen. */
    marginWith: (crackMm: number) => margin(crackMm, givens.temp.peek()),
  } satisfies SimModel<PressureGivens> & Record<string, unknown>;
}
export type PressureModel = ReturnType<typeof makeModel>;
