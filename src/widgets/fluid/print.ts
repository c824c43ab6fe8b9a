/** This simulation's own numbers as printed. */
import { COOL_C } from '../../simulation/choices/temperatures.ts';
import { printer } from '../../quantity/print.ts';
import { format } from '../../quantity/print.ts';
import {
  count,
  dynamicViscosity,
  kinematicViscosity,
  temperature,
  times,
} from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import type { FluidSide } from './model.ts';
import { words } from './words.en.ts';

// Viscosity reads the same in both unit systems.
export const printCst = (cSt: number): string => format(cSt, kinematicViscosity, 'si');
export const printMpas = (mPas: number): string => format(mPas, dynamicViscosity, 'si');

/** How much thinner or how much thicker. */
export const printTimes = (thinner: number): string =>
  format(Math.max(thinner, 1 / thinner), times, 'si');
/** So near to as thick as before that the number would say "1.0 times". */
const alike = (ratio: number): boolean => ratio > 0.995 && ratio < 1.005;

export const printIndex = (index: number | null): string =>
  index === null ? words.noIndex : format(index, count, 'si');

/** One fluid at the temperature set. */
export function saysSide(letter: string, fluid: FluidSide, tempC: number, system: UnitSystem) {
  const { says } = words;
  const [name, state, ratio] = [fluid.name.value, fluid.now.value, fluid.times.value];
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
  if (ratio === null) return says.alone(thickness);
  if (alike(ratio)) return says.alike(thickness);
  return says[ratio > 1 ? 'thinner' : 'thicker']({ ...thickness, times: printTimes(ratio) });
}
