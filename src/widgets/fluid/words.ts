/** The fluid's numbers in words, shared by the sentence, the tasks and the table. */
import { format, formatNumber } from '../../quantity/print.ts';
import {
  count,
  dynamicViscosity,
  kinematicViscosity,
  temperature,
  times,
} from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { COOL_C, type FluidSide } from './model.ts';

export const sayCst = (cSt: number): string => format(cSt, kinematicViscosity, 'si');
export const sayMpas = (mPas: number): string => format(mPas, dynamicViscosity, 'si');
export const sayTemp = (tempC: number, system: UnitSystem): string =>
  format(tempC, temperature, system);

export const sayTimes = (ratio: number): string => formatNumber(ratio, times, 'si');

export const sayIndex = (index: number | null): string =>
  index === null ? 'not defined below 2 cSt at 100 °C' : format(index, count, 'si');

/** "11.6 times thinner than at 20 °C", and the other way about in the cold. */
export function sayThinner(ratio: number | null, system: UnitSystem): string {
  if (ratio === null) return 'no comparison';
  const cool = sayTemp(COOL_C, system);
  if (ratio > 0.995 && ratio < 1.005) return `the same as at ${cool}`;
  return ratio > 1
    ? `${sayTimes(ratio)} times thinner than at ${cool}`
    : `${sayTimes(1 / ratio)} times thicker than at ${cool}`;
}

/** One fluid at the temperature set. */
export function saySide({ name, now, times }: FluidSide, system: UnitSystem): string {
  const state = now.value;
  if (state === null) return `${name.value}: these two numbers carry the law out of its range here`;
  return `${name.value} ${sayCst(state.kinematic)} (${sayMpas(state.dynamic)}), ${sayThinner(times.value, system)}`;
}
