/** Turns a recipe into a picture: paths, ticks in both unit systems, and the same in numbers. */
import { placeAxis, type Axis } from '../charts/axis.ts';
import { linePath } from '../charts/path.ts';
import { quantityOf } from '../quantity/by-name.ts';
import { printBoth } from '../quantity/print-both.ts';
import type { UnitSystem } from '../quantity/unit-system.ts';
import type { ChartPicture, PictureAxis } from '../quiz/chart-picture.ts';
import { readPassage } from '../quiz/read-passage.ts';
import type { AxisAsked, Recipe } from './recipe.ts';
import { words } from './words.en.ts';

/** In the picture's own units: the width of a phone's column, so that its letters are as large as the text. */
const WIDTH = 340;
const HEIGHT = 226;
const FRAME = { left: 46, right: 318, top: 26, bottom: 178 } as const;
/** Letters this close above each other would touch. */
const LETTER = 15;

type Line = Recipe['lines'][number];
const noNumbers = (key: string): never => {
  throw new Error(`A chart asks for the number "${key}"; it has none.`);
};

/** Straight between the points that were computed. */
function valueAt(line: Line, x: number): number {
  const next = line.findIndex(([at]) => at >= x - 1e-9);
  const [x1, y1] = line[Math.max(0, next)] ?? [0, 0];
  const [x0, y0] = line[Math.max(0, next - 1)] ?? [x1, y1];
  return x1 === x0 ? y1 : y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
}

export function drawChart({ about, x, y, lines, tableAt }: Recipe): ChartPicture {
  const asAxis = ({ quantity, ...rest }: AxisAsked): Axis => ({
    ...rest,
    quantity: quantityOf(quantity),
  });
  const across = [FRAME.left, FRAME.right] as const;
  const up = [FRAME.bottom, FRAME.top] as const;
  const drawn = (
    axis: AxisAsked,
    range: readonly [number, number],
    system: UnitSystem,
  ): PictureAxis => {
    const { title, ticks } = placeAxis(asAxis(axis), system, range);
    return { title, ticks: ticks.map(({ place, text }) => ({ place: Math.round(place), text })) };
  };
  const inBoth = (axis: AxisAsked, range: readonly [number, number]) => ({
    si: drawn(axis, range, 'si'),
    us: drawn(axis, range, 'us'),
  });
  const sx = placeAxis(asAxis(x), 'si', across).place;
  const sy = placeAxis(asAxis(y), 'si', up).place;
  const letters = lines.map((_, i) => (lines.length === 1 ? '' : words.letter(i)));
  const ends = apart(lines.map((line) => sy(line.at(-1)?.[1] ?? 0)));
  return {
    about: readPassage(about, noNumbers),
    ...{ width: WIDTH, height: HEIGHT, ...FRAME },
    x: inBoth(x, across),
    y: inBoth(y, up),
    lines: lines.map((line, i) => ({
      path: linePath(
        line.map(([at]) => at),
        line.map(([, value]) => value),
        sx,
        sy,
      ),
      letter: letters[i] ?? '',
      at: [Math.round(sx(line.at(-1)?.[0] ?? 0)) + 5, ends[i] ?? 0] as const,
    })),
    head: [x.label, ...letters.map((letter) => (letter === '' ? y.label : words.line(letter)))],
    rows: tableAt.map((at) => [
      [printBoth(at, x.quantity)],
      ...lines.map((line) => [printBoth(valueAt(line, at), y.quantity)]),
    ]),
  };
}

/** Heights of letters, moved off each other from the top down. */
function apart(heights: readonly number[]): readonly number[] {
  const placed = new Map<number, number>();
  let last = Number.NEGATIVE_INFINITY;
  for (const [i, height] of [...heights.entries()].sort(([, a], [, b]) => a - b)) {
    last = Math.max(height, last + LETTER);
    placed.set(i, Math.round(last) + 4);
  }
  return heights.map((_, i) => placed.get(i) ?? 0);
}
