/** What each of the four cars reads at each degree: brought along by the page, solved. */
import { REPAIRS, type Repair } from '../../car/repair-names.ts';

/** Fluid that a test may be taken at [°C]; one was solved at each degree. */
export const REACH = { min: 10, max: 110 } as const;

export type TestName = 'tap' | 'line' | 'stop';

export type Point = 'idle' | 'load';

/** The columns of a car: Drive is always selected at idle. */
export const COLUMNS: readonly (readonly [TestName, Point])[] = [
  ['tap', 'idle'],
  ['tap', 'load'],
  ['line', 'idle'],
  ['line', 'load'],
  ['stop', 'idle'],
];
const keyOf = (repair: Repair, test: TestName, point: Point): string =>
  `${repair} ${test} ${test === 'stop' ? 'idle' : point}`;

let brought: ReadonlyMap<string, readonly (number | null)[]> = new Map();

/** Takes what the page brought along: a line a column, nothing where the turbine never stands. The same on every page. */
export function bringReadings(text: string): void {
  const lines = text.split('\n');
  brought = new Map(
    REPAIRS.flatMap((repair, car) =>
      COLUMNS.map(([test, point], i) => [
        keyOf(repair, test, point),
        (lines[car * COLUMNS.length + i] ?? '')
          .split(',')
          .map((one) => (one === '' ? null : Number(one))),
      ]),
    ),
  );
}

/** Between two degrees in a straight line [kPa, s]; null where the turbine does not stand at one of them. */
export function readingAt(
  repair: Repair,
  test: TestName,
  point: Point,
  tempC: number,
): number | null {
  const place = Math.min(REACH.max, Math.max(REACH.min, tempC)) - REACH.min;
  const below = Math.floor(place);
  const column = brought.get(keyOf(repair, test, point)) ?? [];
  const [one = null, other = one] = [column[below], column[below + 1]];
  if (place === below || one === null || other === null) return place === below ? one : null;
  return one + (other - one) * (place - below);
}
