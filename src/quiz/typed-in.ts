import { quantityOf, type QuantityName } from '../quantity/by-name.ts';
import { parseAmount } from '../quantity/parse-amount.ts';
import type { UnitSystem } from '../quantity/unit-system.ts';
import type { Given } from './grade.ts';

/**
 * A typed amount as it has to stand in a field of a unit system, so that it means what it meant: with its own unit where it was
 * typed under the other one.
 * @example typedIn({ kind: 'typed', text: '60', system: 'us' }, 'pressure', 'si') // '60 psi'
 */
export function typedIn(
  { text, system }: Extract<Given, { kind: 'typed' }>,
  name: QuantityName,
  shown: UnitSystem,
): string {
  const quantity = quantityOf(name);
  const meant = parseAmount(text, quantity, system);
  const read = parseAmount(text, quantity, shown);
  const same = !meant.ok || (read.ok && read.value === meant.value);
  return same ? text : `${text.trim()} ${quantity[system].symbol}`;
}
