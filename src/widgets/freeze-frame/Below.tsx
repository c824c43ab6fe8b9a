import { DRIVES_C } from '../../cases/frame-form.ts';
import { drives, LISTED } from '../../cases/frame-list.ts';
import { isFault } from '../../diagnosis/hypotheses.ts';
import { printer } from '../../quantity/print.ts';
import { percent, pressure } from '../../quantity/quantities.ts';
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
      <figure class="frame-proofs">
        <figcaption>
          <strong>{table.head}</strong> {table.caption}
        </figcaption>
        <table>
          <thead>
            <tr>
              <th scope="col">{table.name}</th>
              <th scope="col">{table.share}</th>
              <th scope="col">{table.proof}</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ name, share }) => (
              <tr key={name}>
                <th scope="row">{nameOf(name)}</th>
                <td>{print(100 * share, percent)}</td>
                <td>{isFault(name) ? proofs[name] : words.healthy}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </figure>
      <div class="frame-taken">
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
