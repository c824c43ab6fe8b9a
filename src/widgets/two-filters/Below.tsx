import { LIMIT_KPA, POUR } from '../../car/filters.ts';
import { LineChart } from '../../charts/LineChart.tsx';
import { dimension, fluidVolume } from '../../quantity/part-quantities.ts';
import { printer } from '../../quantity/print.ts';
import { percent, pressure, speed } from '../../quantity/quantities.ts';
import { TEMP_AXIS, TEMPS } from '../../simulation/choices/temperatures.ts';
import type { PictureProps } from '../../simulation/simulation-view.tsx';
import { useUnits } from '../../ui/use-units.ts';
import { words } from './below-words.en.ts';
import type { FiltersModel } from './model.ts';
import { words as parts } from './words.en.ts';

/** What starving costs the pump, and what is taken for granted; fetched once the answer is out. */
export function Below({ model }: PictureProps<FiltersModel>) {
  const print = printer(useUnits());
  const { maker, unknown } = model.got.value;
  const { got, taken } = words;
  return (
    <>
      <LineChart
        id="two-filters-got"
        name={got.name}
        takeaway={(s) => got.takeaway({ speed: printer(s)(model.givens.rpm.value, speed) })}
        xAxis={TEMP_AXIS}
        yAxis={{ label: got.axis, quantity: percent, min: 0, max: 105 }}
        x={TEMPS}
        series={[
          { id: 'maker', label: parts.parts.maker, kind: 'healthy', y: maker },
          { id: 'unknown', label: parts.parts.unknown, kind: 'plain', y: unknown },
        ]}
        height="short"
      />
      <div class="below-taken">
        <p>
          <strong>{taken.head}</strong> {taken.law}
        </p>
        <p>{taken.sheet({ limit: print(LIMIT_KPA, pressure) })}</p>
        <p>
          {taken.pour({
            amount: print(POUR.litres, fluidVolume),
            head: print(POUR.headMm, dimension),
          })}
        </p>
        <p>{taken.left}</p>
      </div>
    </>
  );
}
