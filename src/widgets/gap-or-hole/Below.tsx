import { BudgetBars } from '../../charts/BudgetBars.tsx';
import { LineChart } from '../../charts/LineChart.tsx';
import { GAP_REYNOLDS_LIMIT } from '../../engine/index.ts';
import { format, printer } from '../../quantity/print.ts';
import { dimension } from '../../quantity/part-quantities.ts';
import { count, length, percent, temperature, times } from '../../quantity/quantities.ts';
import { Readout } from '../../ui/Readout.tsx';
import { useUnits } from '../../ui/use-units.ts';
import { TEMP_AXIS } from './axis.ts';
import { COOL_C, SEAL_MM, TEMPS, type GapOrHoleModel } from './model.ts';
import { sayLaw, sayShare, sayTimes } from './words.ts';

interface PartProps {
  readonly model: GapOrHoleModel;
}

/** Shown once the answer is out, and fetched then. */
export function Below({ model }: PartProps) {
  return (
    <>
      <Spent model={model} />
      <Share model={model} />
      <Numbers model={model} />
    </>
  );
}

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
      marks={[{ id: 'now', x: temp, y: share, kind: 'now', words: format(share, percent, 'si') }]}
      height="short"
    />
  );
}

function Numbers({ model }: PartProps) {
  const { crack, growth, holeMm } = model;
  const print = printer(useUnits());
  return (
    <div class="gap-numbers">
      <dl class="readouts">
        <Readout label="Crack, hot against cold" value={growth.value.crack} quantity={times}>
          times
        </Readout>
        <Readout label="Hole, hot against cold" value={growth.value.hole} quantity={times}>
          times
        </Readout>
        <Readout
          label={`Hole that matches at ${print(COOL_C, temperature)}`}
          value={holeMm.value}
          quantity={length}
        >
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
        The crack is {print(SEAL_MM.width, dimension)} wide and {print(SEAL_MM.length, dimension)}{' '}
        through, as in the training gearbox, which is invented. The hole grows{' '}
        {sayTimes(growth.value.hole)} because hot fluid is a little lighter; a very small one begins
        to rub as well. In deep cold a real hole passes somewhat less than this.
      </p>
    </div>
  );
}
