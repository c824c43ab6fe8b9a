import { TRUE, UNSURE } from '../../cases/talk-list.ts';
import { NAMES } from '../../diagnosis/hypotheses.ts';
import { printer } from '../../quantity/print.ts';
import { percent } from '../../quantity/quantities.ts';
import type { PictureProps } from '../../simulation/simulation-view.tsx';
import { useUnits } from '../../ui/use-units.ts';
import { words } from './below-words.en.ts';
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
      <figure class="ask-shares">
        <figcaption>
          <strong>{table.head}</strong> {table.caption}
        </figcaption>
        <table>
          <thead>
            <tr>
              <th scope="col">{table.name}</th>
              <th scope="col">{table.share}</th>
            </tr>
          </thead>
          <tbody>
            {shown.map(({ name, share }) => (
              <tr key={name}>
                <th scope="row">{nameOf(name)}</th>
                <td>{print(100 * share, percent)}</td>
              </tr>
            ))}
          </tbody>
        </table>
        {rest > 0 && (
          <p>{table.rest({ count: String(rest), share: print(100 * SHOWN, percent) })}</p>
        )}
      </figure>
      <div class="ask-taken">
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
