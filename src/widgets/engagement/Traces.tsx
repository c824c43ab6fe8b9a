import { LineChart } from '../../charts/LineChart.tsx';
import { COLD_C } from '../../car/cold-and-hot.ts';
import { trainingStory } from '../../engine/index.ts';
import { printer } from '../../quantity/print.ts';
import { pressure, seconds, speed } from '../../quantity/quantities.ts';
import { controllerStrip, eventMarks } from '../../simulation/traces/controller.ts';
import { END, type EngagementModel, type Shown } from './model.ts';
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

export function SpeedTraces({ model, revealed }: TracesProps) {
  const show = model.givens.show.value;
  const cold = model.cold.value;
  // Solved when it shows, and not before. As cold as the cold run it is the same, and no line of its own.
  const hot = revealed && model.givens.temp.value !== COLD_C ? model.hot.value : null;
  // Events of the hot run alone: a cold run that works has little to tell.
  const events = hot ? eventMarks(hot.solved.events, END) : [];
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
        ...(hot
          ? [{ id: 'hot', label: speeds.hot, kind: 'hot' as const, y: hot.speeds[show] }]
          : []),
      ]}
      events={events}
      strips={[
        controllerStrip('strip-cold', speeds.stripCold, cold.solved.states, END),
        ...(hot ? [controllerStrip('strip-hot', speeds.stripHot, hot.solved.states, END)] : []),
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
