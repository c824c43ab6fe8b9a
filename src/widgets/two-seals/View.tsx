import { LineChart } from '../../charts/LineChart.tsx';
import { seconds } from '../../quantity/quantities.ts';
import { TEMP_AXIS } from '../../simulation/choices/temperatures.ts';
import { gripOf } from '../../simulation/grip-of.tsx';
import { simulationView, type PictureProps } from '../../simulation/simulation-view.tsx';
import { makeModel, type SealModel } from './model.ts';
import { bringSeals, SPAN, TEMPS } from './seals.ts';
import { sim } from './sim.ts';
import { words } from './words.en.ts';

const { chart } = words;
const X_AXIS = { ...TEMP_AXIS, min: SPAN.min, max: SPAN.max };
const Y_AXIS = { label: chart.y, quantity: seconds, min: 0, max: 2.5 };

/** Three lines over temperature; until the run has ended they are drawn as far as it has come, and named at the edge alone. */
function Picture({ model, revealed, live }: PictureProps<SealModel>) {
  const { givens, now, alike, sound, split, hard } = model;
  const temp = givens.temp.value;
  const drawn = (curve: readonly (number | null)[]) =>
    revealed ? curve : curve.map((time, i) => ((TEMPS[i] ?? 0) > temp ? null : time));
  const cross = alike.value;
  const meets = cross === null || !revealed ? null : model.at(cross).hard;
  const marks = (['split', 'hard'] as const).flatMap((id) => {
    const y = now.value[id];
    return y === null
      ? []
      : [{ id, kind: 'now' as const, x: temp, y, words: revealed ? chart.now[id] : '' }];
  });
  return (
    <LineChart
      id="two-seals-chart"
      name={chart.name}
      takeaway={chart.takeaway}
      xAxis={X_AXIS}
      yAxis={Y_AXIS}
      x={TEMPS}
      series={[
        { id: 'sound', label: chart.sound, kind: 'healthy', y: drawn(sound.value) },
        { id: 'split', label: chart.split, kind: 'plain', y: drawn(split.value) },
        { id: 'hard', label: chart.hard, kind: 'plain', y: drawn(hard.value) },
      ]}
      marks={[
        ...marks,
        ...(cross === null || meets === null
          ? []
          : [{ id: 'alike', x: cross, y: meets, words: chart.alike }]),
      ]}
      height="short"
      {...gripOf({ live }, sim, 'temp', givens.temp)}
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

/** The seals were solved when the page was built, and come with the island. */
export function View({ seals }: { readonly seals: string }) {
  bringSeals(seals);
  return <Simulation />;
}
