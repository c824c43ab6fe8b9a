import { words as stateWords } from '../../car/states/words.en.ts';
import { words as names } from '../../car/words.en.ts';
import { LineChart } from '../../charts/LineChart.tsx';
import type { EventMark, Strip } from '../../charts/line-data.ts';
import { trainingStory, type EngagementEvent } from '../../engine/index.ts';
import { printer } from '../../quantity/print.ts';
import { pressure, seconds, speed } from '../../quantity/quantities.ts';
import { END, type EngagementModel, type Run, type Shown } from './model.ts';
import { words } from './words.en.ts';

interface TracesProps {
  readonly model: EngagementModel;
  /** Before the answer is out the hot run is not drawn and nothing is marked. */
  readonly revealed: boolean;
}

const { axes, speeds, pressures } = words;
const TIME = { label: axes.time, quantity: seconds, min: 0, max: END };
/** Wide enough for a flare; the chart cuts what goes past, and the words and the table do not. */
const SPEED_MOST: Readonly<Record<Shown, number>> = {
  turbine: 2500,
  sensor: 2500,
  engine: 2500,
  output: 600,
  slip: 1200,
};
const SPEED_AXES = Object.fromEntries(
  Object.entries(SPEED_MOST).map(([id, max]) => [
    id,
    { label: axes[id as Shown], quantity: speed, min: 0, max },
  ]),
) as Readonly<Record<Shown, { label: string; quantity: typeof speed; min: number; max: number }>>;
const PRESSURE_AXIS = { label: axes.pressure, quantity: pressure, min: 0, max: 700 };

/** The events as ticks over the chart, hot run only: a cold run that works has little to tell. */
const marked = (events: readonly EngagementEvent[]): readonly EventMark[] =>
  events
    .filter(({ time }) => time <= END)
    .map(({ time, event: id, code }) => {
      const event = names.events[id];
      return { x: time, words: code === undefined ? event : words.event({ event, code }) };
    });

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

export function SpeedTraces({ model, revealed }: TracesProps) {
  const show = model.givens.show.value;
  const cold = model.cold.value;
  const hot = model.hot.value;
  return (
    <LineChart
      id="engagement-speed"
      name={axes[show]}
      takeaway={(s) => {
        const print = printer(s);
        return speeds.takeaway({
          select: print(trainingStory.select, seconds),
          release: print(trainingStory.brakeOff, seconds),
        });
      }}
      xAxis={TIME}
      yAxis={SPEED_AXES[show]}
      x={model.times}
      series={[
        { id: 'cold', label: speeds.cold, kind: 'cold', y: cold.speeds[show] },
        ...(revealed
          ? [{ id: 'hot', label: speeds.hot, kind: 'hot' as const, y: hot.speeds[show] }]
          : []),
      ]}
      events={revealed ? marked(hot.solved.events) : []}
      strips={[
        strip('strip-cold', speeds.stripCold, cold),
        ...(revealed ? [strip('strip-hot', speeds.stripHot, hot)] : []),
      ]}
      cursor={model.cursor}
      height="tall"
    />
  );
}

export function PressureTraces({ model }: Omit<TracesProps, 'revealed'>) {
  const cold = model.cold.value;
  const hot = model.hot.value;
  return (
    <LineChart
      id="engagement-pressure"
      name={axes.pressure}
      takeaway={pressures.takeaway}
      xAxis={TIME}
      yAxis={PRESSURE_AXIS}
      x={model.times}
      series={[
        { id: 'wanted', label: pressures.wanted, kind: 'plain', y: hot.wanted },
        { id: 'cold', label: pressures.cold, kind: 'cold', y: cold.pressure },
        { id: 'hot', label: pressures.hot, kind: 'hot', y: hot.pressure },
      ]}
      cursor={model.cursor}
    />
  );
}
