/** This simulation's own numbers as printed. */
import { format, formatNumber, printer } from '../../quantity/print.ts';
import {
  count,
  dynamicViscosity,
  kinematicViscosity,
  temperature,
  times,
} from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { COOL_C } from '../../simulation/choices/temperatures.ts';
import type { FluidSide } from './model.ts';
import { OWN_TEMPS } from './own-fluid.ts';
import { words } from './words.en.ts';

export const printCst = (cSt: number): string => format(cSt, kinematicViscosity, 'si');
export const printMpas = (mPas: number): string => format(mPas, dynamicViscosity, 'si');

/** How much thinner or how much thicker: the words say which. */
export const printTimes = (thinner: number): string =>
  formatNumber(Math.max(thinner, 1 / thinner), times, 'si');
/** So near to as thick as before that the number would say "1.0 times". */
const alike = (thinner: number): boolean => thinner > 0.995 && thinner < 1.005;

export const printIndex = (index: number | null): string =>
  index === null ? words.noIndex : format(index, count, 'si');

/** One fluid at the temperature set. */
export function saysSide(letter: string, fluid: FluidSide, tempC: number, system: UnitSystem) {
  const { says } = words;
  const [name, state, thinner] = [fluid.name.value, fluid.now.value, fluid.times.value];
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
  if (thinner === null || thickness.temp === thickness.cool) return says.alone(thickness);
  if (alike(thinner)) return says.alike(thickness);
  return says[thinner > 1 ? 'thinner' : 'thicker']({ ...thickness, times: printTimes(thinner) });
}

/** A typed number by the temperature at which data sheets give it. */
export const ownLabel =
  (key: keyof typeof OWN_TEMPS) =>
  (system: UnitSystem): string =>
    words.controls.own[key]({ temp: format(OWN_TEMPS[key], temperature, system) });
