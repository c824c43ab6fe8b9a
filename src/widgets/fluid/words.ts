/** The fluid's numbers in words, shared by the sentence, the tasks and the table. */
import {
  count,
  dynamicViscosity,
  format,
  kinematicViscosity,
  plain,
  printNumber,
  temperature,
  type Quantity,
  type UnitSystem,
} from '../../ui/quantity.ts';
import { COOL_C, type FluidSide } from './model.ts';

/** From a hundred up the tenths are noise: two published numbers do not carry them to the cold. */
const whole = (quantity: Quantity): Quantity => plain(quantity.name, quantity.si.unit, 0);
const wholeCst = whole(kinematicViscosity);
const wholeMpas = whole(dynamicViscosity);

export const density = plain('density', 'kg/m³', 0, { alsoTyped: ['kg/m3'] });

export const sayCst = (cSt: number): string =>
  format(cSt, cSt < 100 ? kinematicViscosity : wholeCst, 'si');
export const sayMpas = (mPas: number): string =>
  format(mPas, mPas < 100 ? dynamicViscosity : wholeMpas, 'si');
export const sayTemp = (tempC: number, system: UnitSystem): string =>
  format(tempC, temperature, system);

/** 11.6, 3.2 or 40: as many figures as an ear keeps. */
export const sayTimes = (ratio: number): string => printNumber(ratio, ratio < 19.95 ? 1 : 0);

export const sayIndex = (index: number | null): string =>
  index === null ? 'not defined below 2 cSt at 100 °C' : format(index, count, 'si');

/** "11.6 times thinner than at 20 °C", and the other way about in the cold. */
export function sayThinner(times: number | null, system: UnitSystem): string {
  if (times === null) return 'no comparison';
  const cool = sayTemp(COOL_C, system);
  if (times > 0.995 && times < 1.005) return `the same as at ${cool}`;
  return times > 1
    ? `${sayTimes(times)} times thinner than at ${cool}`
    : `${sayTimes(1 / times)} times thicker than at ${cool}`;
}

/** One fluid at the temperature set. */
export function saySide({ name, now, times }: FluidSide, system: UnitSystem): string {
  const state = now.value;
  if (state === null) return `${name.value}: these two numbers carry the law out of its range here`;
  return `${name.value} ${sayCst(state.kinematic)} (${sayMpas(state.dynamic)}), ${sayThinner(times.value, system)}`;
}
