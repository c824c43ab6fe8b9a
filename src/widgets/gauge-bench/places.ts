/** Where the gauge is, in which range, and how warm and fast: the rows and columns of the sheet. */
import { COLD_C, HOT_C } from '../../car/cold-and-hot.ts';

/** The line in Park, Reverse, Drive and third, and each clutch's tap in a range that applies it. */
export const PLACES = [
  'linePark',
  'lineReverse',
  'lineDrive',
  'lineThird',
  'forward',
  'reverse',
  'high',
] as const;
export type Place = (typeof PLACES)[number];
/** The line that feeds each tap, in the same range. */
export const LINE_OF: Partial<Readonly<Record<Place, Place>>> = {
  forward: 'lineDrive',
  reverse: 'lineReverse',
  high: 'lineThird',
};

export const COLUMNS = [
  { tempC: COLD_C, rpm: 700, point: 'idle' },
  { tempC: COLD_C, rpm: 1500, point: 'load' },
  { tempC: HOT_C, rpm: 700, point: 'idle' },
  { tempC: HOT_C, rpm: 1500, point: 'load' },
] as const;
/** How many readings a row has, and all of them written down, as bits. */
export const ACROSS = COLUMNS.length;
export const WHOLE_ROW = 15;
export const isHot = (column: number): boolean => column >= 2;
/** The same at the other temperature, and at the other speed. */
export const otherWarmth = (column: number): number => (column + 2) % ACROSS;
export const otherSpeed = (column: number): number => (column % 2 === 0 ? column + 1 : column - 1);

/** A reading, by its place on the sheet. */
export const readingAt = (place: Place, column: number): number =>
  PLACES.indexOf(place) * ACROSS + column;
export const placeAt = (reading: number): Place =>
  PLACES[Math.floor(reading / ACROSS)] ?? 'linePark';
export const columnAt = (reading: number): number => reading % ACROSS;
export const READINGS = PLACES.length * ACROSS;
