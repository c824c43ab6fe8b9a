/** What a customer can have noticed of a car, by what the tests read on it. */
import { isNumeric, LONGEST_STOP, offScale, testOf } from '../diagnosis/index.ts';

/** How a range behaves as its customer tells it. */
export type Manner = 'good' | 'late' | 'never';
/** What a customer can have noticed, by range and warmth. */
export interface Noticed {
  readonly drive: Readonly<Record<'cold' | 'hot', Manner>>;
  readonly reverse: Readonly<Record<'cold' | 'hot', Manner>>;
  /** Revs rise on take-off, hot. */
  readonly flares: Readonly<Record<'drive' | 'reverse', boolean>>;
  /** The upper gears let go. */
  readonly high: boolean;
  readonly light: boolean;
}

/** Later than a good car by this is noticed [s]. */
export const NOTICED_LATE = 0.25;
/** Slip of the turbine on take-off that is heard [rpm]. */
const HEARD = 150;
/** Share of a good car's pressure under which the high clutch lets go. */
export const HIGH_LOW = 0.6;

/** By what the tests read on a good car and on this one. */
export function noticedOn(
  was: (id: string) => number,
  is: (id: string) => number,
  codes: readonly string[],
): Noticed {
  const manner = (range: string, warm: string): Manner => {
    const id = `stopTime.${range}.${warm}`;
    const seconds = is(id);
    if (seconds > LONGEST_STOP) return 'never';
    return seconds - was(id) > NOTICED_LATE ? 'late' : 'good';
  };
  const range = (name: string) => ({ cold: manner(name, 'cold'), hot: manner(name, 'hot') });
  const flares = (name: string): boolean => {
    const id = `takeoffSlip.${name}.hot`;
    const test = testOf(id);
    return isNumeric(test) && offScale(test, is(id)) > HEARD;
  };
  const high = 'clutch.high.1500.hot';
  return {
    drive: range('drive'),
    reverse: range('reverse'),
    flares: { drive: flares('drive'), reverse: flares('reverse') },
    high: is(high) < HIGH_LOW * was(high),
    light: codes.length > 0,
  };
}

export const showsIn = ({ drive, reverse, flares, high, light }: Noticed): boolean =>
  light ||
  high ||
  flares.drive ||
  flares.reverse ||
  [drive, reverse].some(({ cold, hot }) => cold !== 'good' || hot !== 'good');
