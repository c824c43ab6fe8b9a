/** The classes of fluid, each by the two numbers of its data sheet. */
import { words as names } from '../../car/words.en.ts';
import { fluidClasses, type FluidClass } from '../../engine/index.ts';
import { format, formatNumber } from '../../quantity/print.ts';
import { kinematicViscosity } from '../../quantity/quantities.ts';
import type { ChoiceOption } from '../../ui/Choice.tsx';
import type { ChoiceSpec } from '../sim-spec.ts';
import { words } from './words.en.ts';

/** The one most transmissions are filled with stands first. */
const CLASSES: readonly FluidClass[] = ['low-viscosity', 'standard', 'ultra-low'];

export const fluidName = (name: FluidClass): string => names.fluids[name];

export const fluidOptions: readonly ChoiceOption[] = CLASSES.map((value) => {
  const { kv40CSt, kv100CSt } = fluidClasses[value];
  const at40 = formatNumber(kv40CSt, kinematicViscosity, 'si');
  const at100 = format(kv100CSt, kinematicViscosity, 'si');
  return { value, words: words.fluid({ name: fluidName(value), at40, at100 }) };
});

export const fluidControl = <K extends string>(key: K, label = words.fluidClass) =>
  ({ kind: 'choice', key, label, options: fluidOptions, as: 'select' }) satisfies ChoiceSpec<
    Record<K, string>
  >;
