import { BelowTable } from '../../simulation/below/BelowTable.tsx';
import type { PictureProps } from '../../simulation/simulation-view.tsx';
import { words } from './below-words.en.ts';
import { columnsOf } from './columns-of.ts';
import { shelfAt, type ShelfModel } from './model.ts';
import { printCount, printIn100, printTenth } from './print.ts';

const ROWS = [0, 1, 2, 3, 4, 5, 6];

/** What each one more brings; fetched once the answer is out. */
export function Below({ model }: PictureProps<ShelfModel>) {
  const { table, columns, taken } = words;
  const { keep } = model.shelf.value;
  const rows = keep < ROWS.length ? ROWS : [...ROWS, keep];
  return (
    <>
      <BelowTable
        class="shelf-table"
        head={table.head}
        caption={table.caption}
        columns={[table.keep, table.found, table.wait, table.lying]}
        rows={rows.map((kept) => {
          const { found, waitAYear, money } = shelfAt({ ...model.state.value, keep: kept });
          const number = printCount(kept);
          return {
            key: number,
            cells: [
              kept === keep ? <strong key="now">{number}</strong> : number,
              printIn100(found),
              printTenth(waitAYear),
              printCount(money),
            ],
          };
        })}
      />
      <BelowTable
        class="shelf-columns"
        head={columns.head}
        caption={columns.caption}
        columns={[columns.used, columns.often, columns.next]}
        rows={columnsOf(model).map(({ name, chance, found }) => ({
          key: name,
          cells: [name, printTenth(100 * chance), found ? columns.found : columns.waits],
        }))}
      />
      <div class="below-taken">
        <p>
          <strong>{taken.head}</strong> {taken.law}
        </p>
        <p>{taken.left}</p>
      </div>
    </>
  );
}
