/** The classes of fluid, each by the two numbers of its data sheet. */
import { words as names } from '../../car/words.en.ts';
import { fluidClasses, type FluidClass } from '../../engine/index.ts';
import { formatNumber } from '../../quantity/print.ts';
import { kinematicViscosity } from '../../quantity/quantities.ts';
import type { ChoiceSpec, SimOption } from '../sim-spec.ts';
import { words } from './words.en.ts';

/** The one most transmissions are filled with stands first. */
const CLASSES: readonly FluidClass[] = ['low-viscosity', 'standard', 'ultra-low'];

export const fluidName = (name: FluidClass): string => names.fluids[name];

export const fluidOptions: readonly SimOption[] = CLASSES.map((value) => {
  const { kv40CSt, kv100CSt } = fluidClasses[value];
  const [at40, at100] = [kv40CSt, kv100CSt].map((cSt) =>
    formatNumber(cSt, kinematicViscosity, 'si'),
  ) as [string, string];
  return { value, words: words.fluid({ name: fluidName(value), at40, at100 }) };
});

export const fluidControl = <K extends string>(key: K, label = words.fluidClass) =>
  ({ kind: 'choice', key, label, options: fluidOptions, as: 'select' }) satisfies ChoiceSpec<
    Record<K, string>
  >;
