import { TRUE, UNSURE } from '../../cases/talk-list.ts';
import { NAMES } from '../../diagnosis/hypotheses.ts';
import { printer } from '../../quantity/print.ts';
import { percent } from '../../quantity/quantities.ts';
import { BelowTable } from '../../simulation/below/BelowTable.tsx';
import type { PictureProps } from '../../simulation/simulation-view.tsx';
import { useUnits } from '../../ui/use-units.ts';
import { words } from './below-words.en.ts';
import { Had } from './Had.tsx';
import type { AskFirstModel } from './model.ts';
import { nameOf } from './print.ts';

/** Names under this share stand together at the end. */
const SHOWN = 0.01;

/** The list as numbers, and what is taken for granted; fetched once the answer is out. */
export function Below({ model }: PictureProps<AskFirstModel>) {
  const print = printer(useUnits());
  const rows = NAMES.map((name, i) => ({ name, share: model.list.value[i] ?? 0 })).sort(
    (one, other) => other.share - one.share,
  );
  const shown = rows.filter(({ share }) => share >= SHOWN);
  const rest = rows.length - shown.length;
  const { table, taken } = words;
  return (
    <>
      {model.givens.named.value !== 'none' && <Had model={model} />}
      <BelowTable
        class="ask-shares"
        head={table.head}
        caption={table.caption}
        columns={[table.name, table.share]}
        rows={shown.map(({ name, share }) => ({
          key: name,
          cells: [nameOf(name), print(100 * share, percent)],
        }))}
      >
        {rest > 0 && (
          <p>{table.rest({ count: String(rest), share: print(100 * SHOWN, percent) })}</p>
        )}
      </BelowTable>
      <div class="below-taken">
        <p>
          <strong>{taken.head}</strong> {taken.model}
        </p>
        <p>
          {taken.customer({
            right: print(100 * TRUE, percent),
            unsure: print(100 * UNSURE, percent),
            wrong: print(100 * (1 - TRUE - UNSURE), percent),
          })}
        </p>
        <p>{taken.bits}</p>
      </div>
    </>
  );
}
