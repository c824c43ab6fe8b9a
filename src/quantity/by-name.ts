/**
 * Quantities by the name that content files give them. Apart from the tables, and name by name: a page then carries only
 * what it prints.
 */
import {
  force,
  dimension,
  area,
  volume,
  fluidVolume,
  density,
  mass,
  inertia,
  spin,
  leverArm,
  workedTorque,
  converterCapacity,
  milliseconds,
  friction,
  ratio,
  multiple,
  rate,
} from './part-quantities.ts';
import {
  pressure,
  temperature,
  temperatureRise,
  flow,
  torque,
  length,
  roadSpeed,
  power,
  heat,
  airFlow,
  speed,
  seconds,
  minutes,
  percent,
  kinematicViscosity,
  dynamicViscosity,
  times,
  count,
} from './quantities.ts';
import type { Quantity } from './quantity.ts';
import { watchTime } from './watch-time.ts';

export const quantities = {
  pressure,
  temperature,
  temperatureRise,
  flow,
  torque,
  length,
  roadSpeed,
  power,
  heat,
  airFlow,
  speed,
  seconds,
  minutes,
  percent,
  kinematicViscosity,
  dynamicViscosity,
  times,
  count,
  force,
  dimension,
  area,
  volume,
  fluidVolume,
  density,
  mass,
  inertia,
  spin,
  leverArm,
  workedTorque,
  converterCapacity,
  milliseconds,
  watchTime,
  friction,
  ratio,
  multiple,
  rate,
} as const satisfies Record<string, Quantity>;
export type QuantityName = keyof typeof quantities;
export const quantityNames = Object.keys(quantities) as readonly QuantityName[];

export const quantityOf = (name: QuantityName): Quantity => quantities[name];
