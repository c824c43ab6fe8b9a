import { DRIVES_C } from '../../cases/frame-form.ts';
import { drives, LISTED } from '../../cases/frame-list.ts';
import { isFault } from '../../diagnosis/hypotheses.ts';
import { printer } from '../../quantity/print.ts';
import { percent, pressure } from '../../quantity/quantities.ts';
import { BelowTable } from '../../simulation/below/BelowTable.tsx';
import type { PictureProps } from '../../simulation/simulation-view.tsx';
import { useUnits } from '../../ui/use-units.ts';
import { words } from './below-words.en.ts';
import type { FreezeFrameModel } from './model.ts';
import { nameOf, printCount } from './print.ts';

/** What still fits with what would prove it, and what is taken for granted; fetched once the answer is out. */
export function Below({ model }: PictureProps<FreezeFrameModel>) {
  const print = printer(useUnits());
  const rows = LISTED.map((name, i) => ({ name, share: model.list.value[i] ?? 0 }))
    .filter(({ share }) => share > 0)
    .sort((one, other) => other.share - one.share);
  const { table, taken, proofs } = words;
  const { first } = model.job.value;
  return (
    <>
      <BelowTable
        class="frame-proofs"
        head={table.head}
        caption={table.caption}
        columns={[table.name, table.share, table.proof]}
        rows={rows.map(({ name, share }) => ({
          key: name,
          cells: [
            nameOf(name),
            print(100 * share, percent),
            isFault(name) ? proofs[name] : words.healthy,
          ],
        }))}
      />
      <div class="below-taken">
        {first && (
          <p>
            {taken.pressure({
              command: print(first.command, pressure),
              pressure: print(first.pressure, pressure),
            })}
          </p>
        )}
        <p>
          <strong>{taken.head}</strong>{' '}
          {taken.cars({
            cars: printCount(drives().length / DRIVES_C.length),
            drives: printCount(DRIVES_C.length),
          })}
        </p>
        <p>{taken.drive}</p>
        <p>{taken.rough}</p>
      </div>
    </>
  );
}
