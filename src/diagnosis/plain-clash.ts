/**
 * Two readings that no table is needed to hold against each other: the same test taken twice, and a clutch beside the line that
 * feeds it. The contradictions that the table finds are silent on some of these: where a stop time turns on a little warmth,
 * the law of the car is wide enough for half a second and for no stop at all, and a pressure that no car of the table shows
 * leaves nothing to compare.
 */
import { circuitOf } from '../engine/index.ts';
import { SAME_C } from './before-after.ts';
import type { Contradiction } from './contradictions.ts';
import { GAUGE_GAIN } from './nuisances.ts';
import { neverStopped, type TakenReading } from './posterior.ts';
import {
  errorOf,
  isNumeric,
  isPressure,
  LONGEST_STOP,
  onScale,
  type NumericTest,
} from './tests.ts';

type PlainClash = 'twice' | 'aboveLine';

/** So many standard deviations apart no two honest readings of one amount lie. */
const BEYOND = 6;

/** Whether a line pressure is the one that a clutch pressure comes from. */
const feeds = ({ kind, at }: NumericTest, clutch: NumericTest): boolean =>
  kind === 'linePressure' &&
  clutch.kind === 'clutchPressure' &&
  at.range !== undefined &&
  at.range !== 'park' &&
  circuitOf[at.range] === clutch.at.circuit &&
  at.rpm === clutch.at.rpm &&
  at.warmth === clutch.at.warmth;

/** A number of the sheet, with the variance of its error. */
function numberOf(reading: TakenReading, test: NumericTest) {
  const read = neverStopped(reading) ? LONGEST_STOP : (reading.value as number);
  const y = onScale(test, read);
  // Another gauge, or the same one at another fitting.
  const gain = isPressure(test) ? GAUGE_GAIN * read : 0;
  return { y, variance: errorOf(test, y) ** 2 + gain ** 2 };
}

/** Why two readings cannot both be right on one car at one temperature; null where they can, as far as this goes. */
export function plainClash(one: TakenReading, other: TakenReading): PlainClash | null {
  if (!isNumeric(one.test) || !isNumeric(other.test)) return null;
  const apart = Math.abs((one.temperatureC ?? Number.NaN) - (other.temperatureC ?? Number.NaN));
  // Fluid that was warmer, as written down, is a reason for both to be right.
  if (apart > SAME_C) return null;
  const [a, b] = [numberOf(one, one.test), numberOf(other, other.test)];
  const higher = (a.y - b.y) / Math.sqrt(a.variance + b.variance);
  if (one.test === other.test) return Math.abs(higher) > BEYOND ? 'twice' : null;
  if (feeds(one.test, other.test)) return -higher > BEYOND ? 'aboveLine' : null;
  return feeds(other.test, one.test) && higher > BEYOND ? 'aboveLine' : null;
}

/** What the table found, with what is plain without it. */
export function withPlain(
  found: readonly Contradiction[],
  readings: readonly TakenReading[],
): readonly Contradiction[] {
  const plain = readings.flatMap((other, second) =>
    readings
      .slice(0, second)
      .flatMap((one, first) =>
        plainClash(one, other) !== null &&
        !found.some((pair) => pair.first === first && pair.second === second)
          ? [{ first, second, share: 0 }]
          : [],
      ),
  );
  return [...found, ...plain];
}
