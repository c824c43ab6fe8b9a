import { needIn, SHOP_TESTS, TAPS, type ShopTest } from '../../car/shop-tests.ts';
import { words as names } from '../../car/words.en.ts';
import { flow, pressure } from '../../quantity/quantities.ts';
import { simulationView, type PictureProps } from '../../simulation/simulation-view.tsx';
import { useUnits } from '../../ui/use-units.ts';
import { makeModel, type RangesModel } from './model.ts';
import { across, PatternTable } from './PatternTable.tsx';
import { faultWords } from './says.ts';
import { sim } from './sim.ts';
import { words } from './words.en.ts';

const NEEDS = Object.fromEntries(SHOP_TESTS.map((test) => [test, needIn(test).kPa])) as Record<
  ShopTest,
  number
>;

/** What every gauge shows: the pattern to recognise. */
function Picture({ model, revealed }: PictureProps<RangesModel>) {
  const system = useUnits();
  const readings = model.readings.value;
  const pattern = model.pattern.value;
  const { name, head, healthy, cooler } = words.gauges;
  return (
    <PatternTable
      name={name}
      head={head}
      caption={revealed ? words.says.fault({ fault: faultWords(model, system) }) : healthy}
      quantity={pressure}
      needs={NEEDS}
      rows={[
        ...TAPS.map((tap) => ({
          id: tap,
          label: names.taps[tap],
          values: across(readings, ({ taps }) => taps[tap]),
          verdicts: pattern.taps[tap],
        })),
        {
          id: 'left',
          label: cooler,
          values: across(readings, ({ leftOver }) => leftOver),
          verdicts: pattern.leftOver,
          gone: words.table.none,
          quantity: flow,
        },
      ]}
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
