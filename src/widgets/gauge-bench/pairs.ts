/** Two readings that are worth more together than apart. */
import {
  ACROSS,
  LINE_OF,
  otherSpeed,
  otherWarmth,
  PLACES,
  readingAt,
  type Place,
} from './places.ts';

export const KINDS = ['warmth', 'speed', 'ranges', 'feed'] as const;
export type Kind = (typeof KINDS)[number];
export interface Pair {
  readonly kind: Kind;
  /** Cold, idle, Drive or the line; then hot, 1500, the other range or the tap. */
  readonly first: number;
  readonly second: number;
}

/** One range beside another: the line's, and the taps'. */
const RANGES: readonly (readonly [Place, Place])[] = [
  ['linePark', 'lineDrive'],
  ['lineDrive', 'lineReverse'],
  ['lineDrive', 'lineThird'],
  ['forward', 'reverse'],
  ['forward', 'high'],
  ['reverse', 'high'],
];
const FEEDS = PLACES.flatMap((tap) => {
  const line = LINE_OF[tap];
  return line === undefined ? [] : [[line, tap] as const];
});
const columns = Array.from({ length: ACROSS }, (_, column) => column);

export const PAIRS: readonly Pair[] = [
  ...PLACES.flatMap((place) => [
    ...[0, 1].map((column): Pair => ({
      kind: 'warmth',
      first: readingAt(place, column),
      second: readingAt(place, otherWarmth(column)),
    })),
    ...[0, 2].map((column): Pair => ({
      kind: 'speed',
      first: readingAt(place, column),
      second: readingAt(place, otherSpeed(column)),
    })),
  ]),
  ...RANGES.flatMap(([one, other]) =>
    columns.map((column): Pair => ({
      kind: 'ranges',
      first: readingAt(one, column),
      second: readingAt(other, column),
    })),
  ),
  ...FEEDS.flatMap(([line, tap]) =>
    columns.map((column): Pair => ({
      kind: 'feed',
      first: readingAt(line, column),
      second: readingAt(tap, column),
    })),
  ),
];
