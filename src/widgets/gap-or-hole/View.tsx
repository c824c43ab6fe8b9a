import { useMemo } from 'preact/hooks';
import { GAP_REYNOLDS_LIMIT } from '../../engine/index.ts';
import { BudgetBars } from '../../charts/BudgetBars.tsx';
import type { Axis } from '../../charts/axis.ts';
import { LineChart } from '../../charts/LineChart.tsx';
import type { Mark } from '../../charts/line-data.ts';
import { Readout } from '../../ui/Readout.tsx';
import { count, length, percent, plain, temperature } from '../../ui/quantity.ts';
import type { PictureContext } from '../shell/sim-spec.ts';
import { SimShell } from '../shell/SimShell.tsx';
import { COOL_C, makeGapOrHole, TEMPS, type GapOrHoleModel } from './model.ts';
import { gapOrHoleSim } from './sim.ts';
import { leak, sayLaw, sayLeak, sayShare, sayTemp, sayTimes } from './words.ts';

const TEMP_AXIS: Axis = { label: 'Temperature', quantity: temperature, min: -30, max: 140 };
/** From a drop to the widest crack at the highest pressure. On even steps a thin crack would lie flat. */
const LEAK_AXIS: Axis = { label: 'Leak', quantity: leak, min: 0.001, max: 50, scale: 'log' };
const times = plain('growth', 'times', 1, { digitsUnderTen: 2 });

export function GapOrHole() {
  const model = useMemo(makeGapOrHole, []);
  return (
    <SimShell
      sim={gapOrHoleSim}
      model={model}
      picture={(context) => <Leaks model={model} {...context} />}
      below={() => (
        <>
          <Spent model={model} />
          <Share model={model} />
          <Numbers model={model} />
        </>
      )}
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

/** Where the pressure behind the crack goes, at the temperature set. */
function Spent({ model }: PartProps) {
  const { viscousShare } = model.crack.value;
  return (
    <BudgetBars
      id="gap-or-hole-spent"
      name="Where the crack’s pressure goes"
      takeaway={sayShare(viscousShare)}
      quantity={percent}
      supply={{ label: 'pressure behind it', value: 100 }}
      parts={[
        { id: 'rub', label: 'rubbing along the walls', value: 100 * viscousShare, fill: 'full' },
        { id: 'ends', label: 'getting in and out', value: 100 * (1 - viscousShare), fill: 'open' },
      ]}
      max={100}
      height="short"
    />
  );
}

/** The same share over all temperatures. */
function Share({ model }: PartProps) {
  const temp = model.givens.temp.value;
  const share = 100 * model.crack.value.viscousShare;
  return (
    <LineChart
      id="gap-or-hole-share"
      name="Share spent rubbing"
      takeaway="Rubbing is the part that thick fluid makes worse. Where the share is high, cold fluid all but stops the leak."
      xAxis={TEMP_AXIS}
      yAxis={{ label: 'Share of the pressure', quantity: percent, min: 0, max: 100 }}
      x={TEMPS}
      series={[{ id: 'share', label: 'crack', kind: 'plain', y: model.curves.value.rubbing }]}
      marks={[{ id: 'now', x: temp, y: share, kind: 'now', words: `${Math.round(share)} %` }]}
      height="short"
    />
  );
}

function Numbers({ model }: PartProps) {
  const { crack, growth, holeMm } = model;
  return (
    <div class="gap-numbers">
      <dl class="readouts">
        <Readout label="Crack, hot against cold" value={growth.value.crack} quantity={times} />
        <Readout label="Hole, hot against cold" value={growth.value.hole} quantity={times} />
        <Readout label="Hole that matches at 20 °C (68 °F)" value={holeMm.value} quantity={length}>
          across
        </Readout>
        <Readout
          label={`Reynolds number of the crack, limit ${GAP_REYNOLDS_LIMIT}`}
          value={crack.value.reynolds}
          quantity={count}
        >
          {sayLaw(crack.value)}
        </Readout>
      </dl>
      <p>
        The crack is 14 mm wide and 3 mm through, as in the training gearbox, which is invented. The
        hole grows {sayTimes(growth.value.hole)} because hot fluid is a little lighter; a very small
        one begins to rub as well. In deep cold a real hole passes somewhat less than this.
      </p>
    </div>
  );
}
