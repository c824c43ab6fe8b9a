/** This simulation's own words for its numbers. */
import { words as names } from '../../car/words.en.ts';
import { formatNumber } from '../../quantity/print.ts';
import { count, percent } from '../../quantity/quantities.ts';
import { printer } from '../../quantity/print.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import type { FaultId } from '../../engine/index.ts';
import { columnAt, COLUMNS, isHot } from './places.ts';
import { words } from './words.en.ts';

export const faultName = (fault: FaultId): string => names.faults[fault];
export const printCount = (value: number): string => formatNumber(value, count, 'si');
export const printShare = (share: number, system: UnitSystem): string =>
  printer(system)(100 * share, percent);

/** "Cold 700": how warm, and how fast the engine runs. */
export function whenOf(reading: number): string {
  const column = columnAt(reading);
  const rpm = String(COLUMNS[column]?.rpm ?? '');
  return isHot(column) ? words.hot({ rpm }) : words.cold({ rpm });
}
