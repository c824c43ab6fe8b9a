import { GAP_REYNOLDS_LIMIT } from '../../engine/index.ts';
import {
  count,
  flow,
  format,
  pressure,
  printNumber,
  temperature,
  type Quantity,
  type UnitSystem,
} from '../../ui/quantity.ts';
import { COOL_C, HOT_C, type GapOrHoleModel } from './model.ts';

/** Flow with more places when it is small: a thin crack in cold fluid lets drops through. */
export const leak: Quantity = {
  ...flow,
  si: { ...flow.si, digitsUnderTen: 3 },
  us: { ...flow.us, digitsUnderTen: 4 },
};
const midLeak: Quantity = {
  ...flow,
  si: { ...flow.si, digitsUnderTen: 2 },
  us: { ...flow.us, digitsUnderTen: 2 },
};

export const sayTemp = (tempC: number, system: UnitSystem): string =>
  format(tempC, temperature, system);
export const sayPressure = (kPa: number, system: UnitSystem): string =>
  format(kPa, pressure, system);
export const sayReynolds = (reynolds: number): string => format(reynolds, count, 'si');

/** L/min or gpm with about three figures; below what a spoon could catch, in words. */
export function sayLeak(litres: number, system: UnitSystem): string {
  if (litres < 0.002) return `less than ${format(0.002, leak, system)}`;
  return format(litres, litres < 0.4 ? leak : midLeak, system);
}

/** 10.4 times, 1.03 times: two places where the first would hide the growth. */
export const sayTimes = (ratio: number): string =>
  `${printNumber(ratio, ratio < 2 ? 2 : ratio < 19.95 ? 1 : 0)} times`;

/** What becomes of the two leaks between 20 and 100 °C: the sentence this is all about. */
export const sayGrowth = ({ growth }: GapOrHoleModel, system: UnitSystem): string =>
  `From ${sayTemp(COOL_C, system)} to ${sayTemp(HOT_C, system)} the crack comes to leak ${sayTimes(growth.value.crack)} as much, the hole ${sayTimes(growth.value.hole)}.`;

export function sayShare(viscousShare: number): string {
  const rubbing = Math.round(100 * viscousShare);
  if (rubbing >= 100)
    return 'Of this pressure, nearly all is spent rubbing along the walls, less than 1 % getting in and out.';
  return `Of this pressure, ${rubbing} % is spent rubbing along the walls, ${100 - rubbing} % getting in and out.`;
}

export const sayLaw = ({ laminarLawValid }: GapOrHoleModel['crack']['value']): string =>
  laminarLawValid
    ? `below ${sayReynolds(GAP_REYNOLDS_LIMIT)}, so the flow slides in layers and the law holds`
    : `above ${sayReynolds(GAP_REYNOLDS_LIMIT)}: the flow tumbles and the law is outside its range. Take the leak as an upper estimate`;
