import { COLD_C } from '../../car/cold-and-hot.ts';
import { LineChart } from '../../charts/LineChart.tsx';
import { WholeCarDrawing } from '../../drawings/index.ts';
import { seconds, speed } from '../../quantity/quantities.ts';
import { gripOf } from '../../simulation/grip-of.tsx';
import { simulationView, type PictureProps } from '../../simulation/simulation-view.tsx';
import { useUnits } from '../../ui/use-units.ts';
import { bringOpening, END, makeModel, type WholeCarModel } from './model.ts';
import { sim } from './sim.ts';
import { pictured } from './story.ts';
import { words } from './words.en.ts';

const { chart } = words;
const TIME = { label: chart.time, quantity: seconds, min: 0, max: END };
/** Higher than an engine idles, so that a flare is seen to leave. */
const SPEED = { label: chart.turbine, quantity: speed, min: 0 };
const TOP_RPM = 1600;

/** Both cars at one moment, and the trace that is the handle for it. */
function Picture({ model, stage, live }: PictureProps<WholeCarModel>) {
  const { givens, times } = model;
  const system = useUnits();
  const now = givens.time.value;
  // Nothing but the time moves before it has run, and at the start one row of each car is all that shows.
  const { cold, hot } = (stage === 'predict' && now === 0 && model.opening) || {
    cold: model.cold.value,
    hot: model.hot.value,
  };
  // While a prediction stands, the trace shows no more than has happened.
  const known = stage === 'predict' || stage === 'running' ? now : END;
  const until = (values: readonly number[]) =>
    known === END ? values : values.map((value, i) => ((times[i] ?? 0) <= known ? value : null));
  return (
    <div class="whole-car">
      <WholeCarDrawing id="whole-car-cold" state={pictured(model, cold, COLD_C, system)} />
      <WholeCarDrawing id="whole-car-hot" state={pictured(model, hot, givens.temp.value, system)} />
      <LineChart
        id="whole-car-turbine"
        name={chart.turbine}
        takeaway={chart.takeaway}
        xAxis={TIME}
        yAxis={{ ...SPEED, max: Math.max(TOP_RPM, 2 * (cold.turbine[0] ?? 0)) }}
        x={times}
        series={[
          { id: 'cold', label: chart.cold, kind: 'cold', y: until(cold.turbine) },
          { id: 'hot', label: chart.hot, kind: 'hot', y: until(hot.turbine) },
        ]}
        {...((live('time') || stage === 'running') && { cursor: givens.time, cursorStays: true })}
        {...gripOf({ live }, sim, 'time', givens.time)}
        height="short"
      />
    </div>
  );
}

const Simulation = simulationView({
  sim,
  tasks: () => import('./tasks.ts'),
  makeModel,
  Picture,
  hand: () => import('./Hand.tsx'),
  below: () => import('./Below.tsx'),
});

/** What was solved when the page was built comes with the island. */
export function View({ opening }: { readonly opening: string }) {
  bringOpening(opening);
  return <Simulation />;
}
