import { format } from '../../quantity/print.ts';
import { pressure } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import type { WaysModel } from './model.ts';

/** The ranges by their full names. */
export const RANGES = { P: 'Park', R: 'Reverse', N: 'Neutral', D: 'Drive' } as const;

const endOf = (parked: boolean, fed: 'R' | 'D' | undefined): string =>
  parked ? 'in Park' : fed === undefined ? 'feeds no clutch, free to roll' : `feeds ${RANGES[fed]}`;

/** The sentence under the picture. */
export function says(model: WaysModel, system: UnitSystem): string {
  const { parked, fed, givens, cold, hot } = model;
  const ratchets = givens.fault.value === 'noPower' && !parked.value.electronic;
  const wire = ratchets
    ? 'feeds no clutch, and the pawl ratchets until it is slow'
    : endOf(parked.value.electronic, fed.value.electronic);
  const both = `By wire: ${wire}. By cable: ${endOf(parked.value.mechanical, fed.value.mechanical)}`;
  if (givens.fault.value !== 'misSet' || fed.value.mechanical === undefined) return `${both}.`;
  const [before, after] = [cold, hot].map((one) => format(one.value.clutch, pressure, system));
  return `${both}, clutch at idle ${before} cold, ${after} hot.`;
}
