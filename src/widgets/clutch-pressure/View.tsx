import { LineChart } from '../../charts/LineChart.tsx';
import type { Band, Mark } from '../../charts/line-data.ts';
import { needs } from '../../car/need.ts';
import { training, type Plant } from '../../engine/index.ts';
import { format } from '../../quantity/print.ts';
import { pressure, temperature } from '../../quantity/quantities.ts';
import { TEMP } from '../../simulation/choices/temperatures.ts';
import { gripOf } from '../../simulation/grip-of.tsx';
import { simulationView, type PictureProps } from '../../simulation/simulation-view.tsx';
import { makeModel, SWEEP_TEMPS, type PressureModel } from './model.ts';
import { demandOf, sim } from './sim.ts';
import { words } from './words.en.ts';

const { chart } = words;
const X_AXIS = { label: chart.x, quantity: temperature, min: TEMP.min, max: TEMP.max };
/**
 * A tenth above the clutch command. No slider moves it. The two commands are two tests with two
 * gauges: on one common axis the three lines of the idle test would lie within a finger's width on a phone.
 */
const HEADROOM = 1.125;
const yAxis = (point: keyof Plant['testPoints']) => ({
  label: chart.y,
  quantity: pressure,
  min: 0,
  max: (training.testPoints[point].clutch / 1e3) * HEADROOM,
});
const yAxisFor = { idle: yAxis('idle'), load: yAxis('load') };

const { standing, gentle, firm } = needs;
const BANDS: readonly Band[] = [
  { id: 'take-off', kind: 'needed', label: chart.takeOff, from: gentle.kPa, to: firm.kPa },
  { id: 'standing', kind: 'needed', label: chart.standing, from: standing.kPa, to: standing.kPa },
];

/**
 * Before the answer is out the line is drawn as far as the run has come, and nothing is marked ahead of it. A task asks for
 * the crossing, so it is not marked then.
 */
function Picture({ model, stage, revealed, live }: PictureProps<PressureModel>) {
  const { givens, clutch, need, letsGo, cracked, crackedTo, healthy } = model;
  const temp = givens.temp.value;
  const needsKpa = need.value.kPa;
  // Else nobody asks where it lets go, and a dozen solves are not made.
  const edge = revealed && stage !== 'tasks' ? letsGo.value : null;
  const soFar = revealed ? cracked.value : crackedTo(temp);
  const crossing: readonly Mark[] =
    edge?.kind === 'at'
      ? [
          {
            id: 'crossing',
            x: edge.tempC,
            y: needsKpa,
            words: (system) => chart.letsGo({ temp: format(edge.tempC, temperature, system) }),
          },
        ]
      : [];
  return (
    <LineChart
      id="clutch-pressure-chart"
      name={chart.name}
      takeaway={(system) =>
        chart.takeaway({ demand: demandOf(model), needs: format(needsKpa, pressure, system) })
      }
      xAxis={X_AXIS}
      yAxis={yAxisFor[givens.point.value]}
      x={SWEEP_TEMPS}
      series={[
        { id: 'healthy', label: chart.whole, kind: 'healthy', y: healthy.value },
        { id: 'cracked', label: chart.cracked, kind: 'plain', y: soFar },
      ]}
      bands={BANDS}
      marks={[
        ...crossing,
        { id: 'now', kind: 'now', x: temp, y: clutch.value.kPa, words: chart.now },
      ]}
      {...gripOf({ live }, sim, 'temp', givens.temp)}
    />
  );
}

export const View = simulationView({
  sim,
  tasks: () => import('./tasks.ts'),
  makeModel,
  Picture,
  below: () => import('./Below.tsx'),
});
