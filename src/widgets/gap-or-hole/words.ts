import { GAP_REYNOLDS_LIMIT } from '../../engine/index.ts';
import { format, formatNumber } from '../../quantity/print.ts';
import { count, flow, pressure, temperature, times } from '../../quantity/quantities.ts';
import { fromShown } from '../../quantity/quantity.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { COOL_C, HOT_C, type GapOrHoleModel } from './model.ts';

export const sayTemp = (tempC: number, system: UnitSystem): string =>
  format(tempC, temperature, system);
export const sayPressure = (kPa: number, system: UnitSystem): string =>
  format(kPa, pressure, system);
export const sayReynolds = (reynolds: number): string => format(reynolds, count, 'si');

/** The finest flow that is printed; below it, in words. */
const FINEST = 0.001;
export function sayLeak(litres: number, system: UnitSystem): string {
  const finest = fromShown(FINEST, flow, system);
  return litres < finest
    ? `less than ${format(finest, flow, system)}`
    : format(litres, flow, system);
}

export const sayTimes = (ratio: number): string => `${formatNumber(ratio, times, 'si')} times`;

/** What becomes of the two leaks between 20 and 100 °C: the sentence this is all about. */
export const sayGrowth = ({ growth }: GapOrHoleModel, system: UnitSystem): string =>
  `From ${sayTemp(COOL_C, system)} to ${sayTemp(HOT_C, system)} the crack comes to leak ${sayTimes(growth.value.crack)} as much, the hole ${sayTimes(growth.value.hole)}.`;

export function sayShare(viscousShare: number): string {
  const rubbing = formatNumber(100 * viscousShare, count, 'si');
  if (rubbing === '100')
    return 'Of this pressure, nearly all is spent rubbing along the walls, less than 1 % getting in and out.';
  return `Of this pressure, ${rubbing} % is spent rubbing along the walls, ${100 - Number(rubbing)} % getting in and out.`;
}

export const sayLaw = ({ laminarLawValid }: GapOrHoleModel['crack']['value']): string =>
  laminarLawValid
    ? `below ${sayReynolds(GAP_REYNOLDS_LIMIT)}, so the flow slides in layers and the law holds`
    : `above ${sayReynolds(GAP_REYNOLDS_LIMIT)}: the flow tumbles and the law is outside its range. Take the leak as an upper estimate`;
