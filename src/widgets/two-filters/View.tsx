import { LineChart } from '../../charts/LineChart.tsx';
import type { Mark, Series } from '../../charts/line-data.ts';
import { LIMIT_KPA, POUR } from '../../car/filters.ts';
import { fluidVolume } from '../../quantity/part-quantities.ts';
import { printer } from '../../quantity/print.ts';
import { pressure, temperature } from '../../quantity/quantities.ts';
import { watchTime } from '../../quantity/watch-time.ts';
import { TEMP_AXIS, TEMPS } from '../../simulation/choices/temperatures.ts';
import { gripOf } from '../../simulation/grip-of.tsx';
import { simulationView, type PictureProps } from '../../simulation/simulation-view.tsx';
import { makeModel, PARTS, type FiltersModel, type Part } from './model.ts';
import { sim } from './sim.ts';
import { words } from './words.en.ts';

const LOST_AXIS = { label: words.lost.axis, quantity: pressure, min: 0, max: 80 };
const POUR_AXIS = {
  label: words.pour.axis,
  quantity: watchTime,
  min: 1,
  max: 1000,
  scale: 'log',
} as const;
const KIND = { maker: 'healthy', unknown: 'plain' } as const;

const seriesOf = (curves: Readonly<Record<Part, readonly (number | null)[]>>): readonly Series[] =>
  PARTS.map((part) => ({ id: part, label: words.parts[part], kind: KIND[part], y: curves[part] }));

function Picture({ model, revealed, live }: PictureProps<FiltersModel>) {
  const { givens, now } = model;
  const temp = givens.temp.value;
  const grip = gripOf({ live }, sim, 'temp', givens.temp);
  const nowMarks = (value: (part: Part) => number): readonly Mark[] =>
    PARTS.map((part) => ({ id: `now-${part}`, kind: 'now', x: temp, y: value(part), words: '' }));
  if (givens.watch.value === 'pour') {
    const { name, takeaway } = words.pour;
    return (
      <LineChart
        id="two-filters-pour"
        name={name}
        takeaway={(s) => takeaway({ amount: printer(s)(POUR.litres, fluidVolume) })}
        xAxis={TEMP_AXIS}
        yAxis={POUR_AXIS}
        x={TEMPS}
        series={seriesOf(model.pours.value)}
        marks={nowMarks((part) => now.value[part].pour)}
        {...grip}
      />
    );
  }
  // Before the answer is out the lines end where the thermometer stands.
  const shown = (part: Part) =>
    model.lost.value[part].map((value, i) => (revealed || (TEMPS[i] ?? 0) >= temp ? value : null));
  const starved = revealed
    ? PARTS.flatMap((part): readonly Mark[] => {
        const below = model.starved.value[part];
        return below === null
          ? []
          : [
              {
                id: `starved-${part}`,
                x: below,
                y: LIMIT_KPA,
                words: (s) => words.lost.starved[part]({ temp: printer(s)(below, temperature) }),
              },
            ];
      })
    : [];
  return (
    <LineChart
      id="two-filters-lost"
      name={words.lost.name}
      takeaway={words.lost.takeaway}
      xAxis={TEMP_AXIS}
      yAxis={LOST_AXIS}
      x={TEMPS}
      series={seriesOf({ maker: shown('maker'), unknown: shown('unknown') })}
      bands={[
        { id: 'limit', kind: 'slips', label: words.lost.limit, from: LIMIT_KPA, to: LOST_AXIS.max },
      ]}
      marks={[...starved, ...nowMarks((part) => now.value[part].lostKpa)]}
      {...grip}
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
