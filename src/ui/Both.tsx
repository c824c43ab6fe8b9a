import { format } from '../quantity/print.ts';
import type { Quantity } from '../quantity/quantity.ts';

interface BothProps {
  /** Metric, as everywhere. */
  readonly value: number;
  readonly quantity: Quantity;
}

/** A value in both unit systems; the style sheet shows the reader's. Needs no script. */
export function Both({ value, quantity }: BothProps) {
  const si = format(value, quantity, 'si');
  const us = format(value, quantity, 'us');
  if (si === us) return <span class="number">{si}</span>;
  return (
    <>
      <span class="number u-si">{si}</span>
      <span class="number u-us">{us}</span>
    </>
  );
}
