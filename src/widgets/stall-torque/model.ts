import { computed } from '@preact/signals';
import { kPaFor, stalledTorque } from '../../car/need.ts';
import { clutchTorque, findRoot, RAD_S_PER_RPM, training } from '../../engine/index.ts';
import { givensFrom } from '../../simulation/givens.ts';
import type { SimModel } from '../../simulation/sim-spec.ts';

export type StallGivens = {
  /** Engine speed, wheels and turbine standing [rpm] */
  rpm: number;
  /** What the clutch has [kPa] */
  pressure: number;
};
const { drive, clutches } = training;
export const IDLE_RPM = drive.idleRpm;

const START: StallGivens = { rpm: IDLE_RPM, pressure: 400 };

/** More than any pressure offered can hold against [rpm]. */
const FASTEST = 6000;

/** Every 20 rpm. */
export const SPEEDS: readonly number[] = Array.from({ length: 86 }, (_, i) => 500 + 20 * i);
/** Torque asked of the clutch at each of them [N·m]. */
export const ASKED: readonly number[] = SPEEDS.map((rpm) => stalledTorque(rpm));

/** Engine power at a speed with the turbine standing [kW]: all of it becomes heat. */
export const heatAt = (rpm: number): number =>
  ((stalledTorque(rpm) / drive.stallTorqueRatio) * rpm * RAD_S_PER_RPM) / 1e3;

export function makeModel() {
  const { givens, apply, reset } = givensFrom(START);
  const asked = computed(() => stalledTorque(givens.rpm.value));
  const holds = computed(() => clutchTorque(clutches.forward, givens.pressure.value * 1e3));
  return {
    givens,
    apply,
    reset,
    /** Of the clutch, at this engine speed [N·m]. */
    asked,
    /** By the clutch, at this pressure [N·m]. */
    holds,
    /** What it would take to hold [kPa]. */
    needs: computed(() => kPaFor(asked.value)),
    /** Where the clutch lets go [rpm]. */
    letsGo: computed(() => findRoot((rpm) => stalledTorque(rpm) - holds.value, 0, FASTEST).root),
    heat: computed(() => heatAt(givens.rpm.value)),
  } satisfies SimModel<StallGivens> & Record<string, unknown>;
}
export type StallModel = ReturnType<typeof makeModel>;
