import { printer } from '../../quantity/print.ts';
import { percent, pressure } from '../../quantity/quantities.ts';
import { BelowTable } from '../../simulation/below/BelowTable.tsx';
import type { PictureProps } from '../../simulation/simulation-view.tsx';
import { useUnits } from '../../ui/use-units.ts';
import { words } from './below-words.en.ts';
import { TOLERANCE, type GaugeModel } from './model.ts';
import type { Pair } from './pairs.ts';
import { placeAt } from './places.ts';
import { faultName, printCount, printShare, whenOf } from './print.ts';
import { words as bench } from './words.en.ts';

/** So many pairs are shown. */
const MOST = 8;
const { table, fits, taken } = words;

const readingName = (reading: number): string =>
  table.reading({ place: bench.places[placeAt(reading)], when: whenOf(reading) });
const pairName = ({ kind, first, second }: Pair): string =>
  table.name({
    kind: table.kinds[kind],
    first: readingName(first),
    second: readingName(second),
  });

function Pairs({ model }: { readonly model: GaugeModel }) {
  const system = useUnits();
  const rows = model.pairs.value
    .map((pair) => ({ pair, leaves: model.fitting([pair.first, pair.second]).length }))
    .sort((one, other) => one.leaves - other.leaves)
    .slice(0, MOST);
  const named = model.givens.named.value !== 'none';
  return (
    <BelowTable
      class="gauge-table"
      head={table.head}
      caption={rows.length === 0 ? table.none : table.caption}
      columns={[table.pair, table.read, table.leaves]}
      rows={rows.map(({ pair, leaves }) => ({
        key: `${pair.first}-${pair.second}`,
        cells: [
          pairName(pair),
          table.shares({
            first: printShare(model.shareOf(pair.first), system),
            second: printShare(model.shareOf(pair.second), system),
          }),
          printCount(leaves),
        ],
      }))}
    >
      {named && rows.length > 0 && model.fits.value.length === 1 && (
        <p>{rows[0]?.leaves === 1 ? fits.single : fits.together}</p>
      )}
    </BelowTable>
  );
}

/** Which pair settled it, what still fits, and what is taken for granted; fetched once the answer is out. */
export function Below({ model }: PictureProps<GaugeModel>) {
  const print = printer(useUnits());
  const named = model.givens.named.value !== 'none';
  return (
    <>
      <Pairs model={model} />
      <div class="below-taken gauge-taken">
        <p>
          <strong>{fits.head}</strong> {!named && fits.later}
        </p>
        {named && (
          <ul>
            {model.fits.value.map((name) => (
              <li key={name}>{faultName(name)}</li>
            ))}
            {model.soundFits.value && <li>{fits.sound}</li>}
          </ul>
        )}
        <p>
          <strong>{taken.head}</strong>{' '}
          {taken.same({
            percent: print(100 * TOLERANCE.share, percent),
            pressure: print(TOLERANCE.kPa, pressure),
          })}
        </p>
        <p>{taken.car}</p>
        <p>{taken.rev}</p>
      </div>
    </>
  );
}
