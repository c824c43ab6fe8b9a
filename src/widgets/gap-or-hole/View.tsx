import type { Axis } from '../../charts/axis.ts';
import { LineChart } from '../../charts/LineChart.tsx';
import type { Mark } from '../../charts/line-data.ts';
import { coolAndHot, TEMP_AXIS, TEMPS } from '../../simulation/choices/temperatures.ts';
import { flow } from '../../quantity/quantities.ts';
import { gripOf } from '../../simulation/grip-of.tsx';
import { simulationView, type PictureProps } from '../../simulation/simulation-view.tsx';
import { makeModel, type GapOrHoleModel } from './model.ts';
import { printLeak } from './print.ts';
import { sim } from './sim.ts';
import { words } from './words.en.ts';

/** From a drop to the widest crack at the highest pressure. On even steps a thin crack would lie flat. */
const LEAK_AXIS: Axis = {
  label: words.leaks.axis,
  quantity: flow,
  min: 0.001,
  max: 50,
  scale: 'log',
};

function Picture({ model, revealed, live }: PictureProps<GapOrHoleModel>) {
  const { givens, curves, crack, hole, lawEndsAt } = model;
  const temp = givens.temp.value;
  // Before the answer is out the lines end where the thermometer stands.
  const shown = (values: readonly number[]) =>
    values.map((value, i) => (revealed || (TEMPS[i] ?? 0) <= temp ? value : null));
  const lawEnds = lawEndsAt.value;
  const points = [
    { id: 'crack', at: crack.value.leak, named: words.leaks.crackNow },
    { id: 'hole', at: hole.value, named: words.leaks.holeNow },
  ].sort((one, other) => other.at - one.at);
  const [upper = 0, lower = 0] = points.map(({ at }) => at);
  // Close together they get one name, in their order on the picture, or one would cover the other.
  const close = upper < 3 * lower;
  const now = points.map(({ id, at }, i): Mark => ({
    id,
    x: temp,
    y: at,
    kind: 'now',
    words: (s) => {
      const each = points.map((point) =>
        point.named({ leak: printLeak(point.at, s) }).replace(/ /gu, '\u00a0'),
      );
      if (!close) return each[i] ?? '';
      return i === 0 ? each.join(', ') : '';
    },
  }));
  // First in the list, so that its name gets the place beside its point.
  const law: Mark[] =
    revealed && lawEnds !== null
      ? [
          {
            id: 'law',
            x: lawEnds,
            y: leakAt(curves.value.crack, lawEnds),
            words: words.leaks.lawEnds,
          },
        ]
      : [];
  return (
    <LineChart
      id="gap-or-hole-leak"
      name={words.leaks.name}
      takeaway={(s) => words.leaks.takeaway(coolAndHot(s))}
      xAxis={TEMP_AXIS}
      yAxis={LEAK_AXIS}
      x={TEMPS}
      series={[
        { id: 'crack', label: words.leaks.crack, kind: 'plain', y: shown(curves.value.crack) },
        { id: 'hole', label: words.leaks.hole, kind: 'healthy', y: shown(curves.value.hole) },
      ]}
      marks={[...law, ...now]}
      {...gripOf({ live }, sim, 'temp', givens.temp)}
    />
  );
}

/** The curve at a temperature: its next point, which no eye can tell from the curve itself. */
const leakAt = (curve: readonly number[], tempC: number): number =>
  curve[TEMPS.findIndex((at) => at >= tempC)] ?? 0;

export const View = simulationView({
  sim,
  tasks: () => import('./tasks.ts'),
  makeModel,
  Picture,
  below: () => import('./Below.tsx'),
});
