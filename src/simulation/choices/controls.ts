/** Controls that more than one simulation offers, so that they read and reach alike everywhere. */
import {
  CIRCUITS,
  fluidClasses,
  gearbox,
  testPoints,
  type FluidClass,
} from '../../engine/index.ts';
import { hairs } from '../../ui/hairs.ts';
import { printer } from '../../ui/printer.ts';
import { length, pressure, printNumber, temperature, type Quantity } from '../../ui/quantity.ts';
import type { ChoiceSpec, NumberSpec, SimOption } from '../sim-spec.ts';
import { TEMP } from './temperatures.ts';
import { words } from './words.en.ts';

type Choice<K extends string> = ChoiceSpec<Record<K, string>>;
type Numbers<K extends string> = NumberSpec<Record<K, number>>;

/** The crack, up to the worst of the fault catalogue [mm]. */
export const CRACK = { min: 0, max: 0.4, step: 0.01 } as const;

/** A slider: its given, its label, what it measures, how far it goes and by what step. */
export const numberControl = <K extends string>(
  key: K,
  label: string,
  quantity: Quantity,
  { min, max, step }: Reach,
  words?: NumberSpec<Record<K, number>>['words'],
) =>
  ({
    kind: 'number',
    key,
    label,
    quantity,
    min,
    max,
    step,
    ...(words && { words }),
  }) satisfies Numbers<K>;
interface Reach {
  readonly min: number;
  readonly max: number;
  readonly step: number;
}

export const temperatureControl = <K extends string>(key: K, label = words.temperature) =>
  numberControl(key, label, temperature, TEMP);

export const crackControl = <K extends string>(key: K, label = words.crack) =>
  numberControl(key, label, length, CRACK, hairs);

/** The one most gearboxes are filled with stands first. */
const FLUIDS: readonly FluidClass[] = ['low-viscosity', 'standard', 'ultra-low'];

export const fluidName = (name: FluidClass): string => words.fluids[name];

/** Each class with the two numbers of its data sheet. */
export const fluidOptions: readonly SimOption[] = FLUIDS.map((value) => {
  const { kv40CSt, kv100CSt } = fluidClasses[value];
  const [at40, at100] = [printNumber(kv40CSt, 1), printNumber(kv100CSt, 1)];
  return { value, words: words.fluid({ name: fluidName(value), at40, at100 }) };
});

export const fluidControl = <K extends string>(key: K, label = words.fluidClass) =>
  ({ kind: 'choice', key, label, options: fluidOptions, as: 'select' }) satisfies Choice<K>;

/** Whether a circuit passes through the transfer seal decides most of what a crack there does. */
export const circuitControl = <K extends string>(key: K, label = words.circuit) =>
  ({
    kind: 'choice',
    key,
    label,
    options: CIRCUITS.map((value) => ({
      value,
      words: words.circuits[value],
      note: gearbox.leaks[value].transferSeal.width > 0 ? words.throughSeal : words.pastSeal,
    })),
  }) satisfies Choice<K>;

export const testPointControl = <K extends string>(key: K, label = words.testPoint) =>
  ({
    kind: 'choice',
    key,
    label,
    options: (['idle', 'load'] as const).map((value) => ({
      value,
      words: words.testPoints[value],
      note: (system) => {
        const print = printer(system);
        const { line, clutch } = testPoints[value];
        return words.commands({
          line: print(line / 1e3, pressure),
          clutch: print(clutch / 1e3, pressure),
        });
      },
    })),
  }) satisfies Choice<K>;
