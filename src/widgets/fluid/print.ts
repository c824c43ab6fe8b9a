/** This simulation's own numbers as printed. */
import { COOL_C } from '../../simulation/choices/temperatures.ts';
import { printer } from '../../ui/printer.ts';
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
import type { FluidSide } from './model.ts';
import { words } from './words.en.ts';

export const density = plain('density', 'kg/m³', 0, { alsoTyped: ['kg/m3'] });

/** From a hundred up the tenths are noise: two published numbers do not carry them to the cold. */
const whole = (quantity: Quantity): Quantity => plain(quantity.name, quantity.si.unit, 0);
const wholeCst = whole(kinematicViscosity);
const wholeMpas = whole(dynamicViscosity);
export const printCst = (cSt: number): string =>
  format(cSt, cSt < 100 ? kinematicViscosity : wholeCst, 'si');
export const printMpas = (mPas: number): string =>
  format(mPas, mPas < 100 ? dynamicViscosity : wholeMpas, 'si');

/** 11.6, 3.2 or 40: as many figures as an ear keeps; how much thinner or how much thicker. */
export function printTimes(thinner: number): string {
  const ratio = Math.max(thinner, 1 / thinner);
  return printNumber(ratio, ratio < 19.95 ? 1 : 0);
}
/** So near to as thick as before that the number would say "1.0 times". */
const alike = (times: number): boolean => times > 0.995 && times < 1.005;

export const printIndex = (index: number | null): string =>
  index === null ? words.noIndex : format(index, count, 'si');

/** One fluid at the temperature set. */
export function saysSide(letter: string, fluid: FluidSide, tempC: number, system: UnitSystem) {
  const { says } = words;
  const [name, state, times] = [fluid.name.value, fluid.now.value, fluid.times.value];
  if (state === null) return says.outOfRange({ side: letter, name });
  const print = printer(system);
  const thickness = {
    side: letter,
    name,
    temp: print(tempC, temperature),
    cSt: printCst(state.kinematic),
    mPas: printMpas(state.dynamic),
    cool: print(COOL_C, temperature),
  };
  if (times === null) return says.alone(thickness);
  if (alike(times)) return says.alike(thickness);
  return says[times > 1 ? 'thinner' : 'thicker']({ ...thickness, times: printTimes(times) });
}
