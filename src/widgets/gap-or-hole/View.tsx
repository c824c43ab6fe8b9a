import { useMemo } from 'preact/hooks';
import type { Axis } from '../../charts/axis.ts';
import { LineChart } from '../../charts/LineChart.tsx';
import type { Mark } from '../../charts/line-data.ts';
import type { PictureContext } from '../../simulation/sim-spec.ts';
import { Later } from '../../simulation/Later.tsx';
import { SimShell } from '../../simulation/SimShell.tsx';
import { TEMP_AXIS } from './axis.ts';
import { COOL_C, makeGapOrHole, TEMPS, type GapOrHoleModel } from './model.ts';
import { gapOrHoleSim } from './sim.ts';
import { leak, sayLeak, sayTemp } from './words.ts';

const loadBelow = () => import('./Below.tsx').then(({ Below }) => Below);

/** From a drop to the widest crack at the highest pressure. On even steps a thin crack would lie flat. */
const LEAK_AXIS: Axis = { label: 'Leak', quantity: leak, min: 0.001, max: 50, scale: 'log' };

export function GapOrHole() {
  const model = useMemo(makeGapOrHole, []);
  return (
    <SimShell
      sim={gapOrHoleSim}
      model={model}
      picture={(context) => <Leaks model={model} {...context} />}
      below={() => <Later load={loadBelow} props={{ model }} what="where the pressure goes" />}
    />
  );
}

interface PartProps {
  readonly model: GapOrHoleModel;
}

function Leaks({ model, revealed }: PartProps & PictureContext) {
  const { givens, curves, crack, hole, lawEndsAt } = model;
  const temp = givens.temp.value;
  // Before the answer is out the lines end where the thermometer stands.
  const shown = (values: readonly number[]) =>
    values.map((value, i) => (revealed || (TEMPS[i] ?? 0) <= temp ? value : null));
  const ends = lawEndsAt.value;
  const points = [
    { id: 'crack', at: crack.value.leak },
    { id: 'hole', at: hole.value },
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
        `${point.id} ${sayLeak(point.at, s)}`.replace(/ /gu, '\u00a0'),
      );
      if (!close) return each[i] ?? '';
      return i === 0 ? each.join(', ') : '';
    },
  }));
  // First in the list, so that its name gets the place beside its point.
  const law: Mark[] =
    revealed && ends !== null
      ? [{ id: 'law', x: ends, y: leakAt(curves.value.crack, ends), words: 'laminar law ends' }]
      : [];
  return (
    <LineChart
      id="gap-or-hole-leak"
      name="Leak against temperature"
      takeaway={(s) =>
        `Each line up is ten times more. The two are alike at ${sayTemp(COOL_C, s)}.`
      }
      xAxis={TEMP_AXIS}
      yAxis={LEAK_AXIS}
      x={TEMPS}
      series={[
        { id: 'crack', label: 'crack', kind: 'plain', y: shown(curves.value.crack) },
        { id: 'hole', label: 'drilled hole', kind: 'healthy', y: shown(curves.value.hole) },
      ]}
      marks={[...law, ...now]}
    />
  );
}

/** The curve at a temperature: its next point, which no eye can tell from the curve itself. */
const leakAt = (curve: readonly number[], tempC: number): number =>
  curve[TEMPS.findIndex((at) => at >= tempC)] ?? 0;
