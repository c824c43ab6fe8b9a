import { REPAIRS } from '../../car/repair-names.ts';
import { BelowTable } from '../../simulation/below/BelowTable.tsx';
import type { PictureProps } from '../../simulation/simulation-view.tsx';
import { printer } from '../../quantity/print.ts';
import { percent, pressure, temperature } from '../../quantity/quantities.ts';
import { useUnits } from '../../ui/use-units.ts';
import { words } from './below-words.en.ts';
import { pointsOf, take, type ProofModel } from './model.ts';
import { printTaken, quantityOf } from './print.ts';
import { words as bench } from './words.en.ts';

/** What each of the four would read, and how two errors make one; fetched once the answer is out. */
export function Below({ model }: PictureProps<ProofModel>) {
  const system = useUnits();
  const print = printer(system);
  const state = model.state.value;
  const { test, before, after, rows } = state;
  const { errors, doubt } = model.pair.value;
  const [, point = 'idle'] = pointsOf(state);
  const quantity = quantityOf(test);
  const { cars, taken } = words;
  return (
    <>
      <BelowTable
        class="proof-cars"
        head={cars.head}
        caption={cars.caption({ test: bench.tests[test].words })}
        columns={[
          cars.car,
          cars.first({ temp: print(before, temperature) }),
          cars.second({ temp: print(after, temperature) }),
        ]}
        rows={REPAIRS.map((repair) => ({
          key: repair,
          cells: [
            cars.has[repair],
            printTaken(take(repair, test, before, point), test, system),
            printTaken(take(repair, test, after, point), test, system),
          ],
        }))}
      />
      <div class="below-taken">
        <p>
          <strong>{words.doubt.head}</strong>{' '}
          {words.doubt.sum({
            before: print(errors.before, quantity),
            after: print(errors.after, quantity),
            doubt: print(doubt, quantity),
          })}
        </p>
        <p>
          <strong>{taken.head}</strong>{' '}
          {taken.errors({
            share: print(2, percent),
            kPa: print(10, pressure),
            rows: `${rows}\u00a0s`,
          })}
        </p>
        <p>{taken.car}</p>
      </div>
    </>
  );
}
