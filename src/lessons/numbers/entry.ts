import type { testPoints } from '../../engine/index.ts';
import {
  applyFaults,
  commandsAt,
  drivetrain,
  clutchPressureFor,
  fluidAt,
  fluidClasses,
  gearbox,
  impellerTorque,
  makeFluid,
  RAD_S_PER_RPM,
  revPerSecond,
  solveSteady,
  training,
  type Circuit,
  type FaultSet,
  type FluidClass,
  type FluidState,
  type SteadyState,
} from '../../engine/index.ts';
import { count, pressure, temperature } from '../../quantity/quantities.ts';
import type { Quantity } from '../../quantity/quantity.ts';

export interface EngineNumber {
  /** In the metric unit of its quantity (see src/quantity/quantities.ts): kPa, °C, L/min, N·m, mm, cSt. */
  readonly value: number;
  readonly quantity: Quantity;
  /** What it is, for whoever reads this list. */
  readonly what: string;
}
export type EngineNumbers = Readonly<Record<string, EngineNumber>>;

export const given = (tempC: number): EngineNumber => ({
  value: tempC,
  quantity: temperature,
  what: `a chosen temperature, nobody's result: ${tempC} °C`,
});
export const index = (value: number, what: string): EngineNumber => ({
  value,
  quantity: count,
  what,
});
export const kiloPascals = (pascals: number, what: string): EngineNumber => ({
  value: pascals / 1e3,
  quantity: pressure,
  what,
});

/** A generic fluid class at a temperature. */
export const fluidState = (tempC: number, name: FluidClass = 'low-viscosity'): FluidState =>
  fluidAt(makeFluid(fluidClasses[name]), tempC);

interface Setting {
  readonly tempC: number;
  readonly faults?: FaultSet;
  readonly circuit?: Circuit;
  readonly at?: keyof typeof testPoints;
}

/** The training transmission at one of its two test points, one circuit applied. */
export function gauge(setting: Setting): SteadyState {
  const point = commandsAt(training, setting.at ?? 'idle', setting.circuit ?? 'forward');
  return solveSteady({
    plant: applyFaults(training, setting.faults ?? {}),
    fluid: makeFluid(fluidClasses['low-viscosity']),
    tempC: setting.tempC,
    engineSpeed: revPerSecond(point.engineRpm),
    lineCommand: point.line,
    clutchCommand: point.clutch,
    applied: [setting.circuit ?? 'forward'],
  });
}

/** Clutch pressure [Pa] at a setting. */
export function clutchPressure(setting: Setting): number {
  const state = gauge(setting).circuits[setting.circuit ?? 'forward'];
  if (state === undefined) throw new Error('The circuit asked for was not applied.');
  return state.pressure;
}

/** A crack in the transfer seal by its height [mm], as a fault. */
export const crack = (mm: number): FaultSet => ({ transferSeal: { severity: mm / 0.4 } });

/** Torque a standing turbine puts on the clutch at an engine speed [N m]. */
export const stallTorque = (rpm: number): number =>
  drivetrain.stallTorqueRatio * impellerTorque(drivetrain, rpm * RAD_S_PER_RPM, 0);

/** Clutch pressure needed to hold a standing turbine at an engine speed [Pa]. */
export const neededAt = (rpm: number): number =>
  clutchPressureFor(gearbox.clutches.forward, stallTorque(rpm));
