/** What a typed number meets: the answer, or the wrong rule that leads to it. */
import { quantityOf } from '../quantity/by-name.ts';
import { parseAmount } from '../quantity/parse-amount.ts';
import type { AskedNumber } from './asked.ts';
import type { Given } from './outcome.ts';

export type NumberMet =
  | { readonly ok: false; readonly sentence: string }
  | {
      readonly ok: true;
      readonly value: number;
      readonly right: boolean;
      /** Of several within reach the nearest. */
      readonly rule: AskedNumber['distractors'][number] | undefined;
    };

export function numberMet(
  { quantity, value, within, distractors }: AskedNumber,
  { text, system }: Extract<Given, { kind: 'typed' }>,
): NumberMet {
  const reading = parseAmount(text, quantityOf(quantity), system);
  if (!reading.ok) return reading;
  const off = (target: number): number => Math.abs(reading.value - target);
  // A hair of slack, so that a value typed in the other unit exactly at the limit is not lost to rounding.
  const near = (target: number): boolean => off(target) <= within * (1 + 1e-9);
  const right = near(value);
  const rule = right
    ? undefined
    : [...distractors].filter((d) => near(d.value)).sort((a, b) => off(a.value) - off(b.value))[0];
  return { ok: true, value: reading.value, right, rule };
}
