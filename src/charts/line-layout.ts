import { textFor, type UnitSystem } from '../quantity/unit-system.ts';
import { placeAxis, widestTick, type Axis, type PlacedAxis } from './axis.ts';
import type { Frame } from './Axes.tsx';
import type { Band, LineChartProps, Series, SeriesKind, Strip } from './line-data.ts';
import { known } from './path.ts';
import {
  along,
  leastCovered,
  MARK_WEIGHT,
  TEXT_WEIGHT,
  type Box,
  type Obstacle,
} from './place-boxes.ts';
import { placeLabels } from './place-labels.ts';
import { LINE_HEIGHT } from './TextLines.tsx';
import type { Size } from './use-size.ts';
import { EM_PER_CHARACTER, textWidth, wrap } from './wrap.ts';

export interface PlacedText {
  readonly id: string;
  readonly lines: readonly string[];
  readonly x: number;
  readonly y: number;
}
export interface LineLayout {
  readonly frame: Frame;
  readonly x: PlacedAxis;
  readonly y: PlacedAxis;
  /** Where the x ticks stand: under the strips. */
  readonly foot: number;
  /** Those that a low box has room for. */
  readonly strips: readonly Strip[];
  readonly stripTops: readonly number[];
  readonly stripHeight: number;
  /** Beside the plot at the height that a line ends at, or, without one, where the line leaves the plot. */
  readonly ends: readonly (PlacedText & { readonly lineY?: number; readonly kind: SeriesKind })[];
  readonly bandNames: readonly PlacedText[];
  readonly markNames: readonly NamedMark[];
  readonly eventPlaces: readonly number[];
  /** The lines, and what the names inside the plot have taken: a reading at the cursor keeps off them, but for its own line. */
  readonly taken: readonly Obstacle[];
}

/** One that stands away from its mark is tied to it by a line, from the name to the rim of the mark. */
export interface NamedMark extends PlacedText {
  readonly tie: Tie | null;
}
type Tie = readonly [x1: number, y1: number, x2: number, y2: number];

/** A plot lower than this [em] is a stripe: rather one strip fewer. The last is kept, and the table has them all. */
const LEAST_PLOT = 8;

/** Place in the list of the last value that is there, and of the first of those beyond the axis that no other follows. */
function endOf(
  { y }: Series,
  { min, max }: Axis,
): { readonly last: number; readonly left: number } {
  let last = -1;
  let left = -1;
  for (let i = y.length - 1; i >= 0; i -= 1) {
    const value = y[i];
    if (!known(value)) continue;
    if (last < 0) last = i;
    if (value >= min && value <= max) return { last, left };
    left = i;
  }
  // One that was never in the chart has left it nowhere.
  return { last, left: -1 };
}

/** Everything that has a place in a line chart, from the data and the size of the box alone. */
export function layOutLines(props: LineChartProps, size: Size, system: UnitSystem): LineLayout {
  const { width, height, em } = size;
  const { series, bands = [], marks = [], events = [] } = props;
  const lineHeight = em * LINE_HEIGHT;

  const room = width * (width < em * 36 ? 0.27 : 0.24);
  const endLines = series.map(({ label }) => wrap(label, room, em));
  const longest = Math.max(0, ...endLines.flat().map((line) => textWidth(line, em)));
  const stripHeight = em * 1.7;
  const stripStep = stripHeight + em * 1.5;
  const top = em * (events.length > 0 ? 3.3 : 1.9);
  const foot = height - em * 2.9;
  const spare = foot - top - LEAST_PLOT * em;
  const strips = (props.strips ?? []).slice(-Math.max(1, Math.floor(spare / stripStep)));
  // In a box too low for its strip there is no plot, but never one upside down.
  const bottom = Math.max(top, foot - strips.length * stripStep);
  const left = widestTick(props.yAxis, system) * em * EM_PER_CHARACTER + em * 0.9;
  const frame: Frame = { left, right: width - longest - em * 0.8, top, bottom };
  const x = placeAxis(props.xAxis, system, [frame.left, frame.right]);
  const y = placeAxis(props.yAxis, system, [frame.bottom, frame.top]);

  const inside = (place: number): number => Math.min(frame.bottom, Math.max(frame.top, place));
  // A line with nothing to show yet has no end to name; its room stays, so that nothing moves later.
  const named = series.flatMap((one, i) => {
    const { last, left } = endOf(one, props.yAxis);
    if (last < 0) return [];
    const { id, kind } = one;
    const lineY = inside(y.place(one.y[last] ?? 0));
    return [{ id, kind, lines: endLines[i] ?? [], lineY, left }];
  });
  const staying = named.filter(({ left }) => left < 0);
  const middles = placeLabels(
    staying.map(({ lines, lineY }) => ({ at: lineY, height: lines.length * lineHeight })),
    frame.top - em * 0.6,
    frame.bottom + em * 0.6,
  );

  const plot = plotOf(frame);
  const obstacles: Obstacle[] = [
    ...lineObstacles(props, x, y, frame, em),
    ...gripObstacles(props, x, frame, em),
    ...bands.flatMap((band) => edgesOf(band, y, plot)),
  ];
  const beside = [...middles];
  const ends = named.map(({ id, kind, lines, lineY, left }) =>
    left < 0
      ? { id, kind, lines, lineY, x: frame.right + em * 0.6, y: beside.shift() ?? 0 }
      : {
          ...placeBeside(
            { id, lines, px: x.place(props.x[left] ?? 0), py: lineY },
            plot,
            em,
            obstacles,
          ),
          kind,
        },
  );
  const bandNames = bands
    .filter(({ label }) => label !== '')
    .map((band) => placeBandName(band, y, plot, em, obstacles));
  const markNames = marks.map((mark) => {
    const [px, py] = [x.place(mark.x), y.place(mark.y)];
    const lines = wrap(textFor(mark.words, system), Math.min(plot.width * 0.7, em * 13), em);
    return placeBeside({ id: mark.id, lines, px, py, tied: true }, plot, em, obstacles);
  });

  const eventPlaces = placeLabels(
    events.map((event) => ({ at: x.place(event.x), height: em * 1.6 })),
    frame.left - em * 0.8,
    frame.right + em * 0.8,
  );
  const stripTops = strips.map((_, i) => bottom + i * stripStep + em * 1.4);
  const taken = obstacles.filter(({ weight, of }) => weight ?? of);
  const names = { ends, bandNames, markNames, eventPlaces, taken };
  return { frame, x, y, foot, strips, stripTops, stripHeight, ...names };
}

/** The shortest way from a name to the rim of its mark, where there is room for one to be mistaken. */
function tieTo(px: number, py: number, { x, y, width, height }: Box, em: number): Tie | null {
  const fromX = Math.min(x + width, Math.max(x, px));
  const fromY = Math.min(y + height, Math.max(y, py));
  const [across, down] = [fromX - px, fromY - py];
  const away = Math.hypot(across, down);
  if (away < em * 1.3) return null;
  const rim = (em * 0.5) / away;
  return [fromX, fromY, px + across * rim, py + down * rim];
}

/** Small boxes along the lines and where something happened, and one on each marked point, for names to keep clear of. */
function lineObstacles(
  { x: xs, series, marks = [], events = [] }: LineChartProps,
  x: PlacedAxis,
  y: PlacedAxis,
  { top, bottom }: Frame,
  em: number,
): Obstacle[] {
  const r = em * 0.25;
  const boxes: Obstacle[] = marks.flatMap((mark) => {
    const [px, py] = [x.place(mark.x), y.place(mark.y)];
    return along(px, py, px, py, em * 0.5).map((box) => ({ ...box, weight: MARK_WEIGHT }));
  });
  for (const event of events) {
    const px = x.place(event.x);
    boxes.push(...along(px, top, px, bottom, r));
  }
  const places = xs.map(x.place);
  for (const { id: of, y: ys } of series) {
    places.forEach((px, i) => {
      const [from, to] = [ys[i - 1], ys[i]];
      if (known(from) && known(to)) {
        boxes.push(...along(places[i - 1] ?? px, y.place(from), px, y.place(to), r, of));
      }
    });
  }
  return boxes;
}

/** The grip of a given that is dragged along x, at the foot of the state it is at. */
function gripObstacles(
  { marks = [], over }: LineChartProps,
  x: PlacedAxis,
  frame: Frame,
  em: number,
): readonly Obstacle[] {
  const now = marks.find(({ kind }) => kind === 'now');
  if (!over || !now) return [];
  const size = em * 1.6;
  const place = { x: x.place(now.x) - size / 2, y: frame.bottom - size / 2 };
  return [{ ...place, width: size, height: size, weight: TEXT_WEIGHT }];
}

const pushedInto = (plot: Box, box: Box): Box => ({
  ...box,
  // A letter does not stand on the axis.
  x: Math.max(plot.x + 4, Math.min(box.x, plot.x + plot.width - box.width)),
  y: Math.max(plot.y, Math.min(box.y, plot.y + plot.height - box.height)),
});

/** What a name has taken, with room to the next. */
const printed = ({ x, y, width, height }: Box, em: number): Obstacle => ({
  x: x - em * 0.3,
  y,
  width: width + em * 0.6,
  height,
  weight: TEXT_WEIGHT,
});

/** A band's two edges: its own name rests on them, every other keeps off. */
function edgesOf(band: Band, y: PlacedAxis, plot: Box): readonly Box[] {
  return [band.from, band.to].map((value) => ({ ...plot, y: y.place(value) - 1, height: 2 }));
}

/** On one line; where something would run through it, on two. */
function placeBandName(
  band: Band,
  y: PlacedAxis,
  plot: Box,
  em: number,
  obstacles: Obstacle[],
): PlacedText {
  const clamp = (place: number): number => Math.min(plot.y + plot.height, Math.max(plot.y, place));
  const high = clamp(y.place(band.to));
  const low = clamp(y.place(band.from));
  const whole = textWidth(band.label, em);
  const candidates = [1, 0.6].flatMap((share) => {
    const lines = wrap(band.label, whole * share, em);
    const { width, height } = sizeOf(lines, em);
    // Inside the band where it is tall enough, else resting on its upper edge or hanging below it.
    const rows =
      low - high >= height
        ? [(low + high - height) / 2, high, low - height]
        : [high - height - em * 0.17, low + em * 0.17];
    return rows.flatMap((top) =>
      [0, 4, 8, 2, 6, 1, 3, 5, 7].map((part) => ({
        lines,
        x: plot.x + em * 0.4 + (part / 8) * (plot.width - width - em * 0.8),
        y: top,
        width,
        height,
      })),
    );
  });
  const box = candidates[leastCovered(candidates, obstacles, plot)] ?? { ...plot, lines: [] };
  obstacles.push(printed(box, em));
  return { id: band.id, lines: box.lines, x: box.x, y: box.y + box.height / 2 };
}

/** What lines of text take. A mark without words is a mark all the same. */
const sizeOf = (lines: readonly string[], em: number) => ({
  width: Math.max(0, ...lines.map((line) => textWidth(line, em))),
  height: lines.length * em * LINE_HEIGHT,
});

/** The box that the lines are drawn in. */
export const plotOf = ({ left, right, top, bottom }: Frame): Box => ({
  x: left,
  y: top,
  width: right - left,
  height: bottom - top,
});

interface Beside {
  readonly id: string;
  readonly lines: readonly string[];
  readonly px: number;
  readonly py: number;
  /** Whether a line ties it to the point, so that it may stand anywhere. */
  readonly tied?: boolean;
}

/** A name beside a point, where it covers least. */
function placeBeside(
  { id, lines, px, py, tied = false }: Beside,
  plot: Box,
  em: number,
  obstacles: Obstacle[],
): NamedMark {
  const { width, height } = sizeOf(lines, em);
  const away = em * 0.7;
  const across = [px + away, px - away - width, px - width / 2];
  const down = [
    py - away - height,
    py + away,
    py - height / 2,
    py - away - height * 2,
    py + away + height,
    py - away - height * 3,
    py + away + height * 2,
  ];
  const at = (x: number, y: number): Box => ({ x, y, width, height });
  const places = down.flatMap((top) => across.map((start) => at(start, top)));
  const fifths = tied ? [0, 0.2, 0.4, 0.6, 0.8, 1] : [];
  const off = ({ x, y }: Box): number => Math.hypot(x + width / 2 - px, y + height / 2 - py);
  // Where a place sticks out, the same pushed back in may be free; else wherever there is room, the nearest first.
  const candidates = [
    ...places,
    ...places.map((place) => pushedInto(plot, place)),
    ...fifths
      .flatMap((right) =>
        fifths.map((low) =>
          pushedInto(plot, at(plot.x + right * plot.width, plot.y + low * plot.height)),
        ),
      )
      .toSorted((a, b) => off(a) - off(b)),
  ];
  const boxesOf = (line: Tie | null): Box[] => (line ? along(...line, em * 0.1) : []);
  const best = leastCovered(candidates, obstacles, plot, (one) => boxesOf(tieTo(px, py, one, em)));
  const box = candidates[best] ?? plot;
  const tie = tieTo(px, py, box, em);
  obstacles.push(printed(box, em), ...boxesOf(tie));
  return { id, lines, x: box.x, y: box.y + height / 2, tie };
}
