import {
  clutchKpa,
  crackFault,
  makeCar,
  needOf,
  soundCar,
  stalledTorque,
} from '../../car/index.ts';
import {
  commandsAt,
  fluidAt,
  fluidClasses,
  makeFluid,
  revPerSecond,
  solveSteady,
  training,
  type Circuit,
  type FaultSet,
  type FluidClass,
  type FluidState,
  type Plant,
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
  readonly at?: keyof Plant['testPoints'];
}

const carOf = (faults?: FaultSet) => (faults === undefined ? soundCar : makeCar({ faults }));

/** The whole solution at one of the two test points, one circuit applied; where a reading will do, ask src/car. */
export function gauge({ tempC, faults, circuit = 'forward', at = 'idle' }: Setting): SteadyState {
  const point = commandsAt(training, at, circuit);
  return solveSteady({
    ...carOf(faults),
    tempC,
    engineSpeed: revPerSecond(point.engineRpm),
    lineCommand: point.line,
    clutchCommand: point.clutch,
    applied: [circuit],
  });
}

/** Clutch pressure [Pa] at a setting. */
export const clutchPressure = ({ faults, at: point = 'idle', ...asked }: Setting): number =>
  1e3 * clutchKpa(carOf(faults), { ...asked, point });

/** A crack in the transfer seal by its height [mm], as a fault. */
export const crack = crackFault;

/** Torque a standing turbine puts on the clutch at an engine speed [N m]. */
export const stallTorque = (rpm: number): number => stalledTorque(rpm);

/** What one of the three demands asks of the forward clutch, as a pressure to print. */
export const needed = (demand: Parameters<typeof needOf>[0], what: string): EngineNumber =>
  kiloPascals(1e3 * needOf(demand).kPa, `${what}: ${demand} demand`);
