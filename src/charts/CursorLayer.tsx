import { format } from '../quantity/print.ts';
import { textFor, type UnitSystem } from '../quantity/unit-system.ts';
import type { LineChartProps } from './line-data.ts';
import type { LineLayout } from './line-layout.ts';
import { known, nearestIndex, round } from './path.ts';
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
  const i = nearestIndex(chart.x, at);
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
  const widest = Math.max(0, ...points.map(({ text }) => textWidth(text, em)));
  const toRight = across + em + widest < frame.right;
  const here = format(chart.x[i] ?? 0, chart.xAxis.quantity, system);
  const half = textWidth(here, em) / 2;
  const hereX = Math.min(frame.right - half, Math.max(frame.left + half, across));
  return (
    <g class="cursor">
      <path class="cursor-line" d={`M${round(across)} ${round(frame.top)}V${round(layout.foot)}`} />
      <TextLines
        lines={[here]}
        x={hereX}
        y={frame.top + em * 0.2}
        em={em}
        anchor="middle"
        kind="cursor-here"
      />
      {points.map(({ id, kind, place, text }, n) => (
        <g key={id}>
          <circle class={`dot ${kind}`} cx={round(across)} cy={round(place)} r={round(em * 0.32)} />
          <TextLines
            lines={[text]}
            x={toRight ? across + em * 0.7 : across - em * 0.7}
            y={middles[n] ?? place}
            em={em}
            anchor={toRight ? 'start' : 'end'}
            kind="cursor-value"
          />
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
    [...values, ...states, ...happened].join(', '),
  );
}
