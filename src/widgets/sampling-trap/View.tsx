import { bringRecordings, type AllRecorded } from '../../car/recordings.ts';
import { LineChart } from '../../charts/LineChart.tsx';
import { printer } from '../../quantity/print.ts';
import { count, seconds, speed } from '../../quantity/quantities.ts';
import { simulationView, type PictureProps } from '../../simulation/simulation-view.tsx';
import { Between } from './Between.tsx';
import { makeModel, type TrapModel } from './model.ts';
import { sim } from './sim.ts';
import { words } from './words.en.ts';

const { chart } = words;
const SPEED = { label: chart.name, quantity: speed, min: 0, max: 1000 };

/** The log as a tool draws it; what was between its rows lies under it, once it may be seen. */
function Picture({ model, revealed, stage }: PictureProps<TrapModel>) {
  const { givens, times, log, rate, on, window } = model;
  const [min, max] = window.value;
  const shown = (revealed || stage === 'running') && givens.truth.value && log.value !== null;
  return (
    <LineChart
      id="sampling-trap-speed"
      name={chart.name}
      takeaway={(s) => {
        const print = printer(s);
        return log.value === null
          ? chart.nothing
          : chart.takeaway({
              items: print(on.value.length, count),
              line: print(givens.line.value, count),
              every: print(1 / rate.value, seconds),
            });
      }}
      xAxis={{ label: chart.time, quantity: seconds, min, max }}
      yAxis={SPEED}
      x={times.value}
      series={[
        { id: 'log', label: chart.log, kind: 'plain', y: Array.from(log.value?.turbine ?? []) },
      ]}
      under={(plot) => <Between model={model} plot={plot} shown={shown} />}
      cursor={model.cursor}
    />
  );
}

const Simulation = simulationView({
  sim,
  tasks: () => import('./tasks.ts'),
  makeModel,
  Picture,
  below: () => import('./Below.tsx'),
});

/** What was solved when the page was built comes with the island. */
export function View({ recordings }: { readonly recordings: Partial<AllRecorded> }) {
  bringRecordings(recordings);
  return <Simulation />;
}
