import type { ComponentChildren } from 'preact';
import { Both } from './Both.tsx';
import type { Quantity } from '../quantity/quantity.ts';
import { still } from './still.ts';

interface ReadoutProps {
  readonly label: string;
  readonly value: number;
  readonly quantity: Quantity;
  /** What the number means, as in "enough to hold". */
  readonly children?: ComponentChildren;
}

/** One named number, large, with its unit and what it means. Put several in `<dl class="readouts">`. */
export const Readout = still(({ label, value, quantity, children }: ReadoutProps) => (
  <div class="readout">
    <dt>{label}</dt>
    <dd>
      <Both value={value} quantity={quantity} />
      {children !== undefined && <span class="readout-words"> {children}</span>}
    </dd>
  </div>
));
