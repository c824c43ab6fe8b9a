/** What the model reads where it can: brought along by the page, solved. */
import type { ComplaintId } from '../../cases/complaints.ts';
import type { Readings } from '../../car/complaint-readings.ts';
import { pressure, seconds, speed } from '../../quantity/quantities.ts';
import type { Quantity } from '../../quantity/quantity.ts';

type Tree = Readonly<
  Record<string, Readonly<Record<string, Readonly<Record<string, readonly number[]>>>>>
>;
const QUANTITIES: Readonly<Record<keyof Readings, Quantity>> = { seconds, pressure, speed };

let brought: Partial<Record<string, Tree>> = {};
/** The same on every page, so it need not say for whom. */
export function bringReadings(readings: Readings): void {
  brought = readings;
}

export interface Read {
  readonly quantity: Quantity;
  readonly values: readonly number[];
}
/** What a check reads on a car with this cause; null where it is told in words alone. */
export function readOf(complaint: ComplaintId, check: string, cause: string): Read | null {
  for (const [name, quantity] of Object.entries(QUANTITIES)) {
    const values = brought[name]?.[complaint]?.[check]?.[cause];
    if (values) return { quantity, values };
  }
  return null;
}
