import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import type { TableData } from '../ui/DataTable.tsx';
import { textFor, type UnitSystem } from '../quantity/unit-system.ts';
import { Kept } from '../ui/still.ts';
import { useUnits } from '../ui/use-units.ts';
import { Axes } from './Axes.tsx';
import { ChartFigure } from './ChartFigure.tsx';
import { CursorLayer, cursorWords } from './CursorLayer.tsx';
import { CursorPad } from './CursorPad.tsx';
import { hatchFill, Hatches } from './Hatches.tsx';
import type { Band, LineChartProps } from './line-data.ts';
import { layOutLines, type LineLayout } from './line-layout.ts';
import { linePath, round } from './path.ts';
import { Strips } from './Strips.tsx';
import { TextLines } from './TextLines.tsx';
import { useSize } from './use-size.ts';
import { words } from './words.en.ts';

const NO_BANDS: readonly Band[] = [];

/**
 * Lines over one shared x. Labels stand at the line ends, bands and points carry their names, and
 * the axis ranges come from outside so that they stand still. See `line-data.ts` for the props.
 */
export function LineChart(chart: LineChartProps) {
  const { id, name, takeaway, series, bands = NO_BANDS, marks = [], events = [] } = chart;
  const box = useRef<HTMLDivElement>(null);
  const size = useSize(box);
  const system = useUnits();
  const own = useSignal<number | null>(null);
  const cursor = chart.cursor ?? own;
  const at = cursor.value;
  const { em } = size;
  const layout = layOutLines(chart, size, system);
  const { frame, x, y } = layout;

  const { left, right, top, bottom } = frame;
  // Both stand still while a control moves.
  const ground = (
    <Kept
      by={[id, chart.yAxis, bands, system, left, right, top, bottom]}
      draw={() => (
        <>
          <Hatches id={id} />
          <clipPath id={`${id}-plot`}>
            <rect
              x={round(frame.left)}
              y={round(frame.top - 3)}
              width={round(frame.right - frame.left)}
              height={round(frame.bottom - frame.top + 6)}
            />
          </clipPath>
          <g clip-path={`url(#${id}-plot)`}>
            {bands.map(({ id: band, kind, from, to }) => (
              <rect
                key={band}
                class={`band ${kind}`}
                fill={kind === 'slips' ? hatchFill(id, 'sparse') : undefined}
                x={round(frame.left)}
                width={round(frame.right - frame.left)}
                y={round(y.place(to))}
                height={round(Math.max(1, y.place(from) - y.place(to)))}
              />
            ))}
          </g>
        </>
      )}
    />
  );
  const axes = (
    <Kept
      by={[chart.xAxis, chart.yAxis, system, left, right, top, bottom, layout.foot, em, size.width]}
      draw={() => (
        <Axes x={x} y={y} frame={frame} em={em} foot={layout.foot} titleEnd={size.width} />
      )}
    />
  );

  const pad = chart.x.length > 0 && (
    <CursorPad
      label={words.read(name)}
      x={chart.x}
      cursor={cursor}
      stays={chart.cursorStays === true}
      now={marks.find(({ kind }) => kind === 'now')?.x}
      frame={frame}
      place={x.place}
      words={(i) => cursorWords(chart, i, system)}
    />
  );
  return (
    <ChartFigure
      id={id}
      name={name}
      takeaway={textFor(takeaway, system)}
      box={box}
      size={size}
      tables={() => tables(chart, system)}
      height={chart.height}
      corner
      pad={
        <>
          {pad}
          {chart.over?.(layout)}
        </>
      }
    >
      {ground}
      {axes}
      <g clip-path={`url(#${id}-plot)`}>
        {chart.under?.(layout)}
        {series.map(({ id: line, kind, y: values }) => (
          <path key={line} class={`line ${kind}`} d={linePath(chart.x, values, x.place, y.place)} />
        ))}
      </g>
      {events.map((event, i) => (
        <EventFlag
          key={i}
          number={i + 1}
          at={x.place(event.x)}
          badge={layout.eventPlaces[i] ?? 0}
          layout={layout}
          em={em}
        />
      ))}
      <Strips id={id} layout={layout} em={em} at={at} />
      {layout.bandNames.map((text) => (
        <TextLines key={text.id} {...text} em={em} kind="band-name" />
      ))}
      {marks.map(({ id: mark, x: mx, y: my, kind = 'crossing' }) => (
        <circle
          key={mark}
          class={`mark ${kind}`}
          cx={round(x.place(mx))}
          cy={round(Math.min(frame.bottom, Math.max(frame.top, y.place(my))))}
          r={round(em * 0.42)}
        />
      ))}
      {layout.markNames.map(({ tie, ...text }) => (
        <g key={text.id}>
          {tie && <path class="leader" d={`M${tie.map(round).join(' ')}`} />}
          <TextLines {...text} em={em} kind="mark-name" />
        </g>
      ))}
      {layout.ends.map(({ lineY, kind, ...end }) => (
        <g key={end.id}>
          {lineY !== undefined && (
            <path
              class={`leader ${kind}`}
              d={`M${round(frame.right)} ${round(lineY)}L${round(end.x - em * 0.15)} ${round(end.y)}`}
            />
          )}
          <TextLines {...end} em={em} kind={`end ${kind}`} />
        </g>
      ))}
      {at !== null && <CursorLayer chart={chart} layout={layout} at={at} em={em} system={system} />}
    </ChartFigure>
  );
}

interface EventFlagProps {
  readonly number: number;
  readonly at: number;
  readonly badge: number;
  readonly layout: LineLayout;
  readonly em: number;
}

function EventFlag({ number, at, badge, layout: { frame, foot }, em }: EventFlagProps) {
  const top = frame.top - em * 1.05;
  return (
    <g class="event">
      <path
        d={`M${round(badge)} ${round(top + em * 0.7)}L${round(at)} ${round(frame.top)}V${round(foot)}`}
      />
      <circle cx={round(badge)} cy={round(top)} r={round(em * 0.74)} />
      <TextLines lines={[String(number)]} x={badge} y={top} em={em} anchor="middle" />
    </g>
  );
}

function tables(chart: LineChartProps, system: UnitSystem): readonly TableData[] {
  const { name, x, xAxis, yAxis, series, strips = [], events = [] } = chart;
  const values: TableData = {
    caption: name,
    columns: [
      { label: xAxis.label, quantity: xAxis.quantity, values: x },
      ...series.map(({ label, y }) => ({ label, quantity: yAxis.quantity, values: y })),
    ],
  };
  const happened: TableData = {
    caption: words.events,
    columns: [
      { label: xAxis.label, quantity: xAxis.quantity, values: events.map((event) => event.x) },
      { label: words.event, words: events.map((event) => textFor(event.words, system)) },
    ],
  };
  const states = strips.map(({ label, states: all }) => ({
    caption: label,
    columns: [
      { label: words.from, quantity: xAxis.quantity, values: all.map(({ from }) => from) },
      { label: words.to, quantity: xAxis.quantity, values: all.map(({ to }) => to) },
      { label: words.state, words: all.map(({ label: state }) => state) },
    ],
  }));
  return [...(events.length > 0 ? [happened] : []), values, ...states];
}
