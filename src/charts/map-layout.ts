import type { TableData } from '../ui/DataTable.tsx';
import { formatNumber } from '../quantity/print.ts';
import type { UnitSystem, UnitText } from '../quantity/unit-system.ts';
import type { Frame } from './Axes.tsx';
import type { Axis } from './axis.ts';
import type { ChartHeight } from './ChartFigure.tsx';
import { isInside, splitByContour, type Point } from './contour-areas.ts';
import type { Cells, DeepCell } from './grid.ts';
import { round } from './path.ts';
import { leastCovered, type Box } from './place-boxes.ts';
import { LINE_HEIGHT } from './TextLines.tsx';
import { words as text } from './words.en.ts';
import { textWidth, wrap } from './wrap.ts';

export interface MapCategory {
  readonly id: string;
  /** Written on the area and spoken by the cursor: "holds". */
  readonly label: string;
  readonly fill: 'filled' | 'hatched' | 'plain';
}

export interface HeatMapProps {
  readonly id: string;
  readonly name: string;
  readonly takeaway: UnitText;
  readonly xAxis: Axis;
  readonly yAxis: Axis;
  /** Middles of the cells, rising, metric. */
  readonly x: readonly number[];
  readonly y: readonly number[];
  /** A category id for each cell, `cells[row of y][column of x]`. */
  readonly cells: Cells;
  readonly categories: readonly MapCategory[];
  /** The exact edge between two categories, drawn over the cells. */
  readonly contour?: readonly (readonly [x: number, y: number])[];
  /** Where the controls stand. */
  readonly now?: { readonly x: number; readonly y: number; readonly words: UnitText };
  /** Enter or a tap on a cell; without it the map is only read. */
  readonly onPick?: (x: number, y: number) => void;
  readonly height?: ChartHeight;
}

type Place = (metric: number) => number;

/**
 * The areas of two categories parted by the exact contour, as paths by category; null where there
 * is no such contour or more than two categories, and the cells have to do.
 */
export function exactAreas(
  { x: xs, y: ys, categories, contour = [] }: HeatMapProps,
  deepest: ReadonlyMap<string, DeepCell | null>,
  x: Place,
  y: Place,
  frame: Frame,
): ReadonlyMap<string, string> | null {
  const sides = splitByContour(
    contour.map(([cx, cy]) => [x(cx), y(cy)] as const),
    frame,
  );
  if (sides === null || categories.length !== 2) return null;
  const paths = new Map<string, string>();
  for (const { id } of categories) {
    const deep = deepest.get(id) ?? null;
    // A sliver thinner than a cell has none: the cells have to do.
    if (deep === null) continue;
    const middle: Point = [x(xs[deep.column] ?? 0), y(ys[deep.row] ?? 0)];
    const side = sides.find((polygon) => isInside(middle, polygon));
    if (side) paths.set(id, `M${side.map(([px, py]) => `${round(px)} ${round(py)}`).join('L')}Z`);
  }
  return paths.size === 2 && new Set(paths.values()).size === 2 ? paths : null;
}

/** Where the words on the current state stand: beside it, clear of the contour. */
export function placeNow(
  { now, contour = [] }: HeatMapProps,
  words: string,
  x: Place,
  y: Place,
  frame: Frame,
  em: number,
) {
  const px = x(now?.x ?? 0);
  const py = y(now?.y ?? 0);
  const lines = wrap(words, em * 12, em);
  const width = Math.max(...lines.map((line) => textWidth(line, em)));
  const height = lines.length * em * LINE_HEIGHT;
  const away = em * 0.9;
  const candidates = [py - height / 2, py - away - height, py + away].flatMap((top) =>
    [px + away, px - away - width, px - width / 2].map((left) => ({
      x: left,
      y: top,
      width,
      height,
    })),
  );
  const plot: Box = {
    x: frame.left,
    y: frame.top,
    width: frame.right - frame.left,
    height: frame.bottom - frame.top,
  };
  const obstacles: Box[] = [...contour, [now?.x ?? 0, now?.y ?? 0] as const].map(([cx, cy]) => ({
    x: x(cx) - 4,
    y: y(cy) - 4,
    width: 8,
    height: 8,
  }));
  const best = candidates[leastCovered(candidates, obstacles, plot)] ?? plot;
  return { lines, x: best.x, y: best.y + height / 2 };
}

/** For each column of the map, where each category begins: what a reader takes from it. */
export function mapTable(map: HeatMapProps, system: UnitSystem): TableData {
  const { name, x, y, xAxis, yAxis, cells, categories } = map;
  const { symbol } = yAxis.quantity[system];
  return {
    caption: text.eachState(name, symbol === '' ? yAxis.label : text.axisIn(yAxis.label, symbol)),
    columns: [
      { label: xAxis.label, quantity: xAxis.quantity, values: x },
      ...categories.map(({ id, label }) => ({
        label,
        words: x.map((_, column) => {
          const rows = y.flatMap((value, row) => (cells[row]?.[column] === id ? [value] : []));
          const [low] = rows;
          const high = rows.at(-1);
          if (low === undefined || high === undefined) return text.nowhere;
          const shown = (v: number): string => formatNumber(v, yAxis.quantity, system);
          return low === high ? shown(low) : text.range(shown(low), shown(high));
        }),
      })),
    ],
  };
}
