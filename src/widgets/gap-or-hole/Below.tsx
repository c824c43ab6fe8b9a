import { BudgetBars } from '../../charts/BudgetBars.tsx';
import { LineChart } from '../../charts/LineChart.tsx';
import { training } from '../../engine/index.ts';
import { coolAndHot, TEMP_AXIS, TEMPS } from '../../simulation/choices/temperatures.ts';
import { format, printer } from '../../quantity/print.ts';
import { count, length, percent, times } from '../../quantity/quantities.ts';
import { dimension } from '../../quantity/part-quantities.ts';
import { Readout } from '../../ui/Readout.tsx';
import { useUnits } from '../../ui/use-units.ts';
import type { GapOrHoleModel } from './model.ts';
import { limit, printTimes } from './print.ts';
import { words } from './words.en.ts';

interface PartProps {
  readonly model: GapOrHoleModel;
}

export function Below({ model }: PartProps) {
  return (
    <>
      <Spent model={model} />
      <Share model={model} />
      <Numbers model={model} />
    </>
  );
}

/** The two shares of the crack's pressure, in words. */
export function sharesInWords(viscousShare: number): string {
  const rubbing = Math.round(100 * viscousShare);
  const print = printer('si');
  if (rubbing >= 100) return words.spent.nearlyAll({ least: print(1, percent) });
  return words.spent.shares({
    rubbing: print(rubbing, percent),
    ends: print(100 - rubbing, percent),
  });
}

/** Where the pressure behind the crack goes, at the temperature set. */
function Spent({ model }: PartProps) {
  const { viscousShare } = model.crack.value;
  const { name, supply, rubbing, ends } = words.spent;
  return (
    <BudgetBars
      id="gap-or-hole-spent"
      name={name}
      takeaway={sharesInWords(viscousShare)}
      quantity={percent}
      supply={{ label: supply, value: 100 }}
      parts={[
        { id: 'rub', label: rubbing, value: 100 * viscousShare, fill: 'full' },
        { id: 'ends', label: ends, value: 100 * (1 - viscousShare), fill: 'open' },
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
  const { name, takeaway, axis } = words.share;
  const now = format(share, percent, 'si');
  return (
    <LineChart
      id="gap-or-hole-share"
      name={name}
      takeaway={takeaway}
      xAxis={TEMP_AXIS}
      yAxis={{ label: axis, quantity: percent, min: 0, max: 100 }}
      x={TEMPS}
      series={[
        { id: 'share', label: words.leaks.crack, kind: 'plain', y: model.curves.value.rubbing },
      ]}
      marks={[{ id: 'now', x: temp, y: share, kind: 'now', words: now }]}
      height="short"
    />
  );
}

function Numbers({ model }: PartProps) {
  const { crack, growth, holeMm } = model;
  const system = useUnits();
  const print = printer(system);
  const { numbers } = words;
  const { width, length: through } = training.leaks.forward.transferSeal;
  return (
    <div class="gap-numbers">
      <dl class="readouts">
        <Readout label={numbers.crack} value={growth.value.crack} quantity={times}>
          {numbers.times}
        </Readout>
        <Readout label={numbers.hole} value={growth.value.hole} quantity={times}>
          {numbers.times}
        </Readout>
        <Readout
          label={numbers.matching(coolAndHot(system))}
          value={holeMm.value}
          quantity={length}
        >
          {numbers.across}
        </Readout>
        <Readout label={numbers.reynolds({ limit })} value={crack.value.reynolds} quantity={count}>
          {crack.value.laminarLawValid ? numbers.calm({ limit }) : numbers.wild({ limit })}
        </Readout>
      </dl>
      <p>
        {numbers.note({
          width: print(width * 1e3, dimension),
          through: print(through * 1e3, dimension),
          holeTimes: printTimes(growth.value.hole),
        })}
      </p>
    </div>
  );
}
