import { useSignal, type Signal } from '@preact/signals';
import { bisectCenter } from 'd3-array';
import { useEffect } from 'preact/hooks';
import type { Axis } from '../../charts/axis.ts';
import { LineChart } from '../../charts/LineChart.tsx';
import type { Series } from '../../charts/line-data.ts';
import type { LogRead } from '../../log/analyse.ts';
import type { Cut } from '../../log/cut.ts';
import { format } from '../../quantity/print.ts';
import { controllerStrip } from '../../simulation/traces/controller.ts';
import { useUnits } from '../../ui/use-units.ts';
import { printLong, whereOf } from './findings.ts';
import type { LogReader } from './model.ts';
import { pressure, seconds, speed } from './quantities.ts';
import { words } from './result-words.en.ts';

interface PlaceProps {
  readonly model: LogReader;
  readonly log: LogRead;
  /** The focus goes back to what was pressed. */
  readonly back: () => void;
}

/** The readings round the place that a finding comes from, the cursor on it. */
export function PlaceInLog({ model, log, back }: PlaceProps) {
  const system = useUnits();
  const cursor = useSignal<number | null>(null);
  const place = model.place.value;
  const cut = model.placeCut.value;
  const read = log.engagements[place?.engagement ?? -1];
  const zero = read?.at ?? 0;
  // The chart's cursor stands on readings, and a finding may lie between two.
  const at = cut?.time[bisectCenter(cut.time, (place?.at ?? 0) - zero)] ?? 0;
  useEffect(() => {
    cursor.value = place === null ? null : at;
  }, [place, cut]);
  if (place === null) return <p class="muted">{words.placeHow}</p>;
  if (cut === null) return <p role="status">{words.fetching}</p>;
  const name = read
    ? words.traceName(whereOf(read, system))
    : words.traceAlone(printLong(place.at));
  const xAxis: Axis = {
    label: read ? words.sinceSelection : words.logTime,
    quantity: seconds,
    min: cut.time[0] ?? 0,
    max: Math.max((cut.time[0] ?? 0) + 1, cut.time.at(-1) ?? 1),
  };
  const series: readonly Series[] = [
    ...(cut.engine
      ? [{ id: 'engine', kind: 'healthy' as const, label: words.engineLine, y: cut.engine }]
      : []),
    { id: 'turbine', kind: 'plain', label: words.turbineLine, y: cut.turbine },
    ...(cut.output
      ? [{ id: 'output', kind: 'healthy' as const, label: words.outputLine, y: cut.output }]
      : []),
  ];
  const strips =
    read && cut.output && !read.tooSlowForRatio
      ? [
          controllerStrip(
            'controller',
            words.controller,
            read.watched.states.map(({ time, state }) => ({ time: time - zero, state })),
            xAxis.max,
          ),
        ]
      : [];
  return (
    <div class="wide">
      <LineChart
        id="log-place-chart"
        name={name}
        takeaway={words.traceTakeaway(format(cursor.value ?? at, seconds, system))}
        xAxis={xAxis}
        yAxis={{ label: words.speedAxis, quantity: speed, min: 0, max: top(series, 100) }}
        x={cut.time}
        series={series}
        strips={strips}
        cursor={cursor}
        cursorStays
      />
      <Pressures cut={cut} xAxis={xAxis} cursor={cursor} />
      <p class="no-print">
        <button type="button" class="quiet" onClick={back}>
          {words.backToFinding}
        </button>
      </p>
    </div>
  );
}

const top = (series: readonly Series[], step: number): number =>
  Math.ceil(Math.max(step, ...series.flatMap(({ y }) => y.map((value) => value ?? 0))) / step) *
  step;

interface PressuresProps {
  readonly cut: Cut;
  readonly xAxis: Axis;
  readonly cursor: Signal<number | null>;
}

function Pressures({ cut, xAxis, cursor }: PressuresProps) {
  const series: readonly Series[] = [
    ...(cut.linePressure
      ? [{ id: 'line', kind: 'healthy' as const, label: words.lineLine, y: cut.linePressure }]
      : []),
    ...(cut.clutchPressure
      ? [{ id: 'clutch', kind: 'plain' as const, label: words.clutchLine, y: cut.clutchPressure }]
      : []),
  ];
  if (series.length === 0) return null;
  return (
    <LineChart
      id="log-pressure-chart"
      name={words.pressureChart}
      takeaway={words.pressureTakeaway}
      xAxis={xAxis}
      yAxis={{ label: words.pressureAxis, quantity: pressure, min: 0, max: top(series, 100) }}
      x={cut.time}
      series={series}
      cursor={cursor}
      height="short"
    />
  );
}
