import { LineChart } from '../../charts/LineChart.tsx';
import { pressure } from '../../quantity/quantities.ts';
import { TEMP_AXIS } from '../../simulation/choices/temperatures.ts';
import { gripOf } from '../../simulation/grip-of.tsx';
import { simulationView, type PictureProps } from '../../simulation/simulation-view.tsx';
import { AirBars } from './AirBars.tsx';
import { makeModel, SWEEP_TEMPS, type HeatAndAirModel } from './model.ts';
import { sim } from './sim.ts';
import { words } from './words.en.ts';

const { chart } = words;
/** A tenth above the boosted command of Reverse. */
const Y_AXIS = { label: chart.y, quantity: pressure, min: 0, max: 570 };

function Picture({ model, live }: PictureProps<HeatAndAirModel>) {
  const { givens, here, healthy, now } = model;
  return (
    <>
      <LineChart
        id="heat-and-air-chart"
        name={chart.name}
        takeaway={chart.takeaway}
        xAxis={TEMP_AXIS}
        yAxis={Y_AXIS}
        x={SWEEP_TEMPS}
        series={[
          { id: 'healthy', label: chart.healthy, kind: 'healthy', y: healthy.value },
          { id: 'here', label: chart.here, kind: 'plain', y: here.value },
        ]}
        marks={[{ id: 'now', kind: 'now', x: givens.temp.value, y: now.value, words: chart.now }]}
        height="short"
        {...gripOf({ live }, sim, 'temp', givens.temp)}
      />
      <AirBars model={model} />
    </>
  );
}

export const View = simulationView({
  sim,
  tasks: () => import('./tasks.ts'),
  makeModel,
  Picture,
  below: () => import('./Below.tsx'),
});
