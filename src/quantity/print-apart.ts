import { format, printed, withUnit } from './print.ts';
import type { Quantity } from './quantity.ts';
import type { UnitSystem } from './unit-system.ts';

/**
 * Two values of which a sentence says that they differ. Where both would print alike, decimals are added to both until
 * they do not: "slips: 322.6 of 323.1 kPa". Three more at most; who asks for finer than that has equal values.
 */
export function formatApart(
  a: number,
  b: number,
  quantity: Quantity,
  system: UnitSystem,
): readonly [string, string] {
  for (let more = 0; more <= 3; more += 1) {
    const [one, other] = [a, b].map((value) => printed(value, quantity, system, more));
    if (one !== other)
      return [
        withUnit(one ?? '', quantity[system].symbol),
        withUnit(other ?? '', quantity[system].symbol),
      ];
  }
  const alike = format(a, quantity, system);
  return [alike, alike];
}
