import { words as stateWords } from '../../car/states/words.en.ts';
import type { Signal } from '@preact/signals';
import { LineChart } from '../../charts/LineChart.tsx';
import type { EventMark, Strip } from '../../charts/line-data.ts';
import type { EngagementEvent } from '../../engine/index.ts';
import { pressure, seconds, speed } from '../../quantity/quantities.ts';
import { END, type EngagementModel, type Run, type Shown } from './model.ts';

interface TracesProps {
  readonly model: EngagementModel;
  /** Before the answer is out the hot run is not drawn and nothing is marked. */
  readonly revealed: boolean;
  readonly cursor: Signal<number | null>;
}

const TIME = { label: 'Time', quantity: seconds, min: 0, max: END };
/** Wide enough for a flare; the chart cuts what goes past, and the words and the table do not. */
const SPEED_MOST: Readonly<Record<Shown, number>> = {
  turbine: 2500,
  sensor: 2500,
  engine: 2500,
  output: 600,
  slip: 1200,
};
const SPEED_NAMES: Readonly<Record<Shown, string>> = {
  turbine: 'Turbine speed',
  sensor: 'Turbine speed, as its sensor says',
  engine: 'Engine speed',
  output: 'Output speed',
  slip: 'Slip',
};
const PRESSURE_MOST = 700;

/** The numbers of the events under the chart, hot run only: a cold run that works has little to tell. */
const marked = (events: readonly EngagementEvent[]): readonly EventMark[] =>
  events
    .filter(({ time }) => time <= END)
    .map(({ time, event, code }) => ({
      x: time,
      words: code === undefined ? event : `${event}: ${code}`,
    }));

function strip(id: string, label: string, run: Run): Strip {
  const { states } = run.solved;
  return {
    id,
    label,
    states: states
      .filter(({ time }) => time < END)
      .map(({ time, state }, i) => ({
        from: time,
        to: Math.min(END, states[i + 1]?.time ?? END),
        label: stateWords[state],
        kind: state.startsWith('failSafe')
          ? 'hatched'
          : state === 'pressureRaised'
            ? 'filled'
            : 'plain',
      })),
  };
}

export function SpeedTraces({ model, revealed, cursor }: TracesProps) {
  const show = model.givens.show.value;
  const cold = model.cold.value;
  const hot = model.hot.value;
  return (
    <LineChart
      id="engagement-speed"
      name={SPEED_NAMES[show]}
      takeaway="Range selected at 0.5 s, brake off and throttle at 3 s."
      xAxis={TIME}
      yAxis={{ label: SPEED_NAMES[show], quantity: speed, min: 0, max: SPEED_MOST[show] }}
      x={model.times}
      series={[
        { id: 'cold', label: 'cold', kind: 'cold', y: cold.speeds[show] },
        ...(revealed
          ? [{ id: 'hot', label: 'hot', kind: 'hot' as const, y: hot.speeds[show] }]
          : []),
      ]}
      events={revealed ? marked(hot.solved.events) : []}
      strips={
        revealed
          ? [
              strip('strip-cold', 'Controller, cold', cold),
              strip('strip-hot', 'Controller, hot', hot),
            ]
          : [strip('strip-cold', 'Controller, cold', cold)]
      }
      cursor={cursor}
      height="tall"
    />
  );
}

export function PressureTraces({ model, cursor }: Omit<TracesProps, 'revealed'>) {
  const cold = model.cold.value;
  const hot = model.hot.value;
  return (
    <LineChart
      id="engagement-pressure"
      name="Clutch pressure"
      takeaway="Wanted is what the controller commands in the hot run; had is what the clutch gets."
      xAxis={TIME}
      yAxis={{ label: 'Clutch pressure', quantity: pressure, min: 0, max: PRESSURE_MOST }}
      x={model.times}
      series={[
        { id: 'wanted', label: 'wanted, hot', kind: 'plain', y: hot.wanted },
        { id: 'cold', label: 'had, cold', kind: 'cold', y: cold.pressure },
        { id: 'hot', label: 'had, hot', kind: 'hot', y: hot.pressure },
      ]}
      cursor={cursor}
    />
  );
}
