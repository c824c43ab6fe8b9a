/** Sliders, and the two that most simulations have, so that they read and reach alike everywhere. */
import type { Signal } from '@preact/signals';
import { hairs } from '../../quantity/hairs/hairs.ts';
import { length, temperature } from '../../quantity/quantities.ts';
import type { Quantity } from '../../quantity/quantity.ts';
import type { UnitText } from '../../quantity/unit-system.ts';
import type { NumberSpec } from '../sim-spec.ts';
import { TEMP } from './temperatures.ts';
import { words } from './words.en.ts';

interface Reach {
  readonly min: number;
  readonly max: number;
  readonly step: number;
}
/** The crack in the transfer seal, up to the worst of the fault catalogue [mm]. */
export const CRACK: Reach = { min: 0, max: 0.4, step: 0.01 };

/**
 * The next stop of the crack's control from a value [mm]: a hundredth of a millimetre from a whole one, a thousandth of an
 * inch from anything else, as a US reader's control steps. Tasks that ask for "the widest that holds" are judged by it.
 */
export const crackStop = (mm: number): number =>
  Math.abs(mm / CRACK.step - Math.round(mm / CRACK.step)) < 1e-6 ? CRACK.step : 0.0254;

/** Takes what a drag of the crack has come to [mm], as far as its control goes. */
export const pulledTo = (crack: Signal<number>) => (mm: number) => {
  crack.value = Math.min(CRACK.max, Math.max(CRACK.min, mm));
};

/** A slider: its given, its label, what it measures, how far it goes and by what step. */
export const numberControl = <K extends string>(
  key: K,
  label: UnitText,
  quantity: Quantity,
  { min, max, step }: Reach,
  beside?: NumberSpec<Record<K, number>>['words'],
) =>
  ({
    kind: 'number',
    key,
    label,
    quantity,
    min,
    max,
    step,
    ...(beside && { words: beside }),
  }) satisfies NumberSpec<Record<K, number>>;

export const temperatureControl = <K extends string>(key: K, label: UnitText = words.temperature) =>
  numberControl(key, label, temperature, TEMP);

export const crackControl = <K extends string>(key: K, label: UnitText = words.crack) =>
  numberControl(key, label, length, CRACK, hairs);
