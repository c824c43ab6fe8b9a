import { LineChart } from '../../charts/LineChart.tsx';
import type { Mark } from '../../charts/line-data.ts';
import { format } from '../../quantity/print.ts';
import { speed, torque } from '../../quantity/quantities.ts';
import { gripOf } from '../../simulation/grip-of.tsx';
import { simulationView, type PictureProps } from '../../simulation/simulation-view.tsx';
import { ASKED, makeModel, SPEEDS, type StallModel } from './model.ts';
import { ENGINE, sim } from './sim.ts';
import { words } from './words.en.ts';

const { chart } = words;
const X_AXIS = { label: chart.x, quantity: speed, min: ENGINE.min, max: ENGINE.max };
const Y_AXIS = { label: chart.y, quantity: torque, min: 0, max: 360 };

/** Before the answer is out the line is drawn as far as the engine has come; where it lets go is for a task to find. */
function Picture({ model, revealed, live, stage }: PictureProps<StallModel>) {
  const { givens, asked, holds, letsGo } = model;
  const rpm = givens.rpm.value;
  const edge = letsGo.value;
  const crossing: readonly Mark[] =
    revealed && stage !== 'tasks' && edge > ENGINE.min && edge < ENGINE.max
      ? [
          {
            id: 'lets-go',
            x: edge,
            y: holds.value,
            words: (system) => chart.letsGo({ speed: format(edge, speed, system) }),
          },
        ]
      : [];
  return (
    <LineChart
      id="stall-torque-chart"
      name={chart.name}
      takeaway={chart.takeaway}
      xAxis={X_AXIS}
      yAxis={Y_AXIS}
      x={SPEEDS}
      series={[
        { id: 'holds', label: chart.holds, kind: 'healthy', y: SPEEDS.map(() => holds.value) },
        {
          id: 'asked',
          label: chart.asked,
          kind: 'plain',
          y: ASKED.map((at, i) => (revealed || (SPEEDS[i] ?? 0) <= rpm ? at : null)),
        },
      ]}
      marks={[...crossing, { id: 'now', kind: 'now', x: rpm, y: asked.value, words: chart.now }]}
      {...gripOf({ live }, sim, 'rpm', givens.rpm)}
    />
  );
}

export const View = simulationView({
  sim,
  tasks: () => import('./tasks.ts'),
  makeModel,
  Picture,
});
