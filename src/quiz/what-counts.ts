import { quantityOf } from '../quantity/by-name.ts';
import { parseAmount } from '../quantity/parse-amount.ts';
import { printBoth } from '../quantity/print-both.ts';
import type { AskedNumber } from './asked.ts';
import type { Passage } from './passage.ts';
import { words } from './words.en.ts';

type Counted = Pick<AskedNumber, 'value' | 'within' | 'quantity'>;

/**
 * Who works with the rounded amounts of a question lands beside what the engine has, and is told how far beside it is right: else
 * 34 × 30 = 1012 looks like a mistake. Nothing where the answer is printed whole, or its limits alike.
 */
export function whatCounts({ value, within, quantity: name }: Counted): Passage {
  const limits = [value - within, value + within] as const;
  const [least, most] = [printBoth(limits[0], name), printBoth(limits[1], name)];
  const whole = (['si', 'us'] as const).every((system) => {
    const read = parseAmount(printBoth(value, name)[system], quantityOf(name), system);
    return read.ok && Math.abs(read.value - value) < 1e-9 * Math.abs(value);
  });
  if (whole || least.si === most.si || least.us === most.us) return [];
  const [before, between, after] = words.counts.split('#');
  return [` ${before ?? ''}`, least, between ?? '', most, after ?? ''];
}
