import { answerOf, splits } from '../../cases/split-list.ts';
import { listOf } from '../../quantity/lists.ts';
import { BelowTable } from '../../simulation/below/BelowTable.tsx';
import type { PictureProps } from '../../simulation/simulation-view.tsx';
import { words } from './below-words.en.ts';
import type { ThreeChecksModel } from './model.ts';
import { answers, causeName, checkName, printMinutes } from './print.ts';

const { table, taken } = words;

/** Each answer that is still open, and whom it would leave. */
function rowsOf({ givens, keys, left, checkOf }: ThreeChecksModel) {
  const complaint = givens.complaint.value;
  const useful = keys.value.filter((key) => splits(checkOf(key), left.value));
  return useful.flatMap((key) =>
    answers(complaint, key).flatMap((says, place) => {
      const leaves = left.value.filter((cause) => answerOf(checkOf(key), cause) === place);
      if (leaves.length === 0) return [];
      const names = leaves.map((cause) => causeName(complaint, cause));
      return [{ key: `${key}-${place}`, cells: [checkName(complaint, key), says, listOf(names)] }];
    }),
  );
}

/** What the open checks would do, the quickest way, and what is taken for granted; fetched once the answer is out. */
export function Below({ model }: PictureProps<ThreeChecksModel>) {
  const { givens, left, goesOn, plan } = model;
  const { first, minutes } = plan.value;
  const caption = left.value.length === 1 ? table.done : goesOn.value ? table.caption : table.end;
  return (
    <>
      <BelowTable
        class="checks-table"
        head={table.head}
        caption={caption}
        columns={[table.check, table.says, table.leaves]}
        rows={rowsOf(model)}
      >
        {!goesOn.value && first !== null && (
          <p>
            {words.quickest({
              minutes: printMinutes(minutes),
              first: checkName(givens.complaint.value, first),
            })}
          </p>
        )}
      </BelowTable>
      <div class="below-taken">
        <p>
          <strong>{taken.head}</strong> {taken.words}
        </p>
        <p>{taken.model}</p>
      </div>
    </>
  );
}
