/** What a typed number meets: the answer, or the wrong rule that leads to it. */
import { quantityOf } from '../quantity/by-name.ts';
import { parseAmount } from '../quantity/parse-amount.ts';
import { usual } from '../quantity/usual.ts';
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

/** How such a number is written: as it is met in life, and neither the answer nor what a wrong rule leads to. */
function exampleFor({ quantity, value, within, distractors }: AskedNumber): number {
  const told = [value, ...distractors.map((one) => one.value)];
  const [size] = [1, 2, 4]
    .map((many) => many * usual[quantity])
    .filter((one) => told.every((target) => Math.abs(one - target) > within));
  return size ?? usual[quantity];
}

export function numberMet(
  asked: AskedNumber,
  { text, system }: Extract<Given, { kind: 'typed' }>,
): NumberMet {
  const { quantity, value, within, distractors } = asked;
  const example = exampleFor(asked);
  const reading = parseAmount(text, quantityOf(quantity), system, { example });
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
