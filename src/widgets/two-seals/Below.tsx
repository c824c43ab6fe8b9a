import { LineChart } from '../../charts/LineChart.tsx';
import { LIP, SHOP_C, slowness, squeezeMm } from '../../car/lip.ts';
import { printer } from '../../quantity/print.ts';
import { dimension } from '../../quantity/part-quantities.ts';
import { length, temperature, times } from '../../quantity/quantities.ts';
import { BelowTable } from '../../simulation/below/BelowTable.tsx';
import { TEMP_AXIS } from '../../simulation/choices/temperatures.ts';
import type { PictureProps } from '../../simulation/simulation-view.tsx';
import { useUnits } from '../../ui/use-units.ts';
import { words } from './below-words.en.ts';
import { START, type SealModel } from './model.ts';
import { SPAN, TEMPS } from './seals.ts';

const { chart, table, taken } = words;
/** Where the spring of the rubber is told [°C]; up to a hundred above its glass point the law is good. */
const ROWS = [-10, 0, 10];
const NEW = TEMPS.map((tempC) => squeezeMm(0, tempC));

/** What cold does to the rubber itself, and what the picture leaves out; fetched once the answer is out. */
export function Below({ model }: PictureProps<SealModel>) {
  const print = printer(useUnits());
  const set = Number(model.givens.lip.value) / 100;
  const temp = model.givens.temp.value;
  return (
    <>
      <LineChart
        id="two-seals-squeeze"
        name={chart.name}
        takeaway={chart.takeaway}
        xAxis={{ ...TEMP_AXIS, min: SPAN.min, max: SPAN.max }}
        yAxis={{ label: chart.y, quantity: length, min: -0.1, max: 0.4 }}
        x={TEMPS}
        series={[
          { id: 'new', label: chart.new, kind: 'healthy', y: NEW },
          {
            id: 'set',
            label: chart.set,
            kind: 'plain',
            y: TEMPS.map((tempC) => squeezeMm(set, tempC)),
          },
        ]}
        bands={[{ id: 'off', kind: 'slips', label: chart.off, from: -0.1, to: 0 }]}
        marks={[{ id: 'now', kind: 'now', x: temp, y: squeezeMm(set, temp), words: chart.now }]}
        height="short"
      />
      <BelowTable
        class="seals-table"
        head={table.head}
        caption={table.caption({ shop: print(SHOP_C, temperature) })}
        columns={[table.temp, table.spring]}
        rows={ROWS.map((tempC) => ({
          key: String(tempC),
          cells: [print(tempC, temperature), table.times({ times: print(slowness(tempC), times) })],
        }))}
      />
      <div class="below-taken">
        <p>
          <strong>{taken.head}</strong>{' '}
          {taken.lip({
            new: print(LIP.newMm, length),
            reach: print(LIP.reachMm, dimension),
            glass: print(LIP.glassC, temperature),
          })}
        </p>
        <p>{taken.gap({ frost: print(START.temp, temperature) })}</p>
        <p>{taken.left}</p>
      </div>
    </>
  );
}
