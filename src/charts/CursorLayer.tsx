import { bisectCenter } from 'd3-array';
import { format } from '../quantity/print.ts';
import { textFor, type UnitSystem } from '../quantity/unit-system.ts';
import type { LineChartProps } from './line-data.ts';
import { plotOf, type LineLayout } from './line-layout.ts';
import { known, round } from './path.ts';
import { along, leastCovered, TEXT_WEIGHT, type Obstacle } from './place-boxes.ts';
import { placeLabels } from './place-labels.ts';
import { LINE_HEIGHT, TextLines } from './TextLines.tsx';
import { words } from './words.en.ts';
import { textWidth } from './wrap.ts';

interface CursorLayerProps {
  readonly chart: LineChartProps;
  readonly layout: LineLayout;
  readonly at: number;
  readonly em: number;
  readonly system: UnitSystem;
}

/** The line under the cursor, with every series' value beside its point. */
export function CursorLayer({ chart, layout, at, em, system }: CursorLayerProps) {
  const { frame, x, y } = layout;
  const i = bisectCenter(chart.x, at);
  const across = x.place(chart.x[i] ?? 0);
  const points = chart.series.flatMap((series) => {
    const value = series.y[i];
    if (!known(value)) return [];
    const place = Math.min(frame.bottom, Math.max(frame.top, y.place(value)));
    return [
      {
        id: series.id,
        kind: series.kind,
        place,
        text: format(value, chart.yAxis.quantity, system),
      },
    ];
  });
  const middles = placeLabels(
    points.map(({ place }) => ({ at: place, height: em * LINE_HEIGHT })),
    // The place of the cursor itself is printed above them.
    frame.top + em * 0.9,
    frame.bottom + em * 0.5,
  );
  const here = format(chart.x[i] ?? 0, chart.xAxis.quantity, system);
  const taken: Obstacle[] = [
    ...layout.taken,
    ...points.flatMap(({ place }) => along(across, place, across, place, em * 0.4)),
  ];
  /** The middle of a text: of its places, each the left edge and the middle of the line, the one most in the clear. */
  const put = (
    text: string,
    places: readonly (readonly [left: number, middle: number])[],
    own = '',
  ) => {
    const size = { width: textWidth(text, em), height: em };
    const boxes = places.map(([x, middle]) => ({ x, y: middle - em / 2, ...size }));
    // No place is farther from the cursor: of a long line only a piece is looked at, at each move.
    const off = taken.filter(
      (one) => one.of !== own && Math.abs(one.x - across) < one.width + size.width + em,
    );
    const box = boxes[leastCovered(boxes, off, plotOf(frame))] ?? { x: 0, y: 0, ...size };
    taken.push({ ...box, weight: TEXT_WEIGHT });
    return { x: box.x + box.width / 2, y: box.y + em / 2 };
  };
  const wide = textWidth(here, em);
  const hereAt = put(
    here,
    [across - wide / 2, across - wide - em * 0.4, across + em * 0.4].map((left) => [
      Math.min(frame.right - wide, Math.max(frame.left, left)),
      frame.top + em * 0.5,
    ]),
  );
  // In a plot too low for them, beside the names of the lines, what is said below the picture has to do.
  const fits = (points.length + 3) * em * LINE_HEIGHT <= frame.bottom - frame.top;
  const readings = points.map((point, n) => {
    const sides = [across + em * 0.7, across - em * 0.7 - textWidth(point.text, em)];
    const middle = middles[n] ?? point.place;
    // Beside the point; where a name or a line stands there, a line or two below or above it.
    const places = [0, 1.2, 2.4, -1.2].flatMap((down) =>
      sides.map((left) => [left, middle + down * em] as const),
    );
    return { ...point, ...put(point.text, places, point.id) };
  });
  return (
    <g class="cursor">
      <path class="cursor-line" d={`M${round(across)} ${round(frame.top)}V${round(layout.foot)}`} />
      <TextLines lines={[here]} {...hereAt} em={em} anchor="middle" kind="cursor-here" />
      {readings.map(({ id, kind, place, text, x: middle, y: line }) => (
        <g key={id}>
          <circle class={`dot ${kind}`} cx={round(across)} cy={round(place)} r={round(em * 0.32)} />
          {fits && (
            <TextLines
              lines={[text]}
              x={middle}
              y={line}
              em={em}
              anchor="middle"
              kind="cursor-value"
            />
          )}
        </g>
      ))}
    </g>
  );
}

/** What the cursor says at one stop, for the ear. */
export function cursorWords(chart: LineChartProps, i: number, system: UnitSystem): string {
  const at = chart.x[i] ?? 0;
  const values = chart.series.map(({ label, y }) => {
    const value = y[i];
    return `${label} ${known(value) ? format(value, chart.yAxis.quantity, system) : words.noValue}`;
  });
  const states = (chart.strips ?? []).flatMap(({ label, states: all }) => {
    const state = all.find(({ from, to }) => at >= from && at < to);
    return state ? [`${label} ${state.label}`] : [];
  });
  // What happened since the stop before: events need not fall on a stop.
  const before = chart.x[i - 1] ?? -1;
  const happened = (chart.events ?? []).flatMap((event) =>
    event.x > before && event.x <= at ? [textFor(event.words, system)] : [],
  );
  return words.at(
    format(at, chart.xAxis.quantity, system),
    [...values, ...states, ...happened].join('; '),
  );
}
