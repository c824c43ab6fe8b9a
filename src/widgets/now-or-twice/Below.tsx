import { BelowTable } from '../../simulation/below/BelowTable.tsx';
import type { PictureProps } from '../../simulation/simulation-view.tsx';
import { words } from './below-words.en.ts';
import type { OpenModel } from './model.ts';
import { cars, printCount, printHours } from './print.ts';

/** How often it bites and what it comes to in money; fetched once the answer is out. */
export function Below({ model }: PictureProps<OpenModel>) {
  const { sums, givens } = model;
  const { chances, noneLeft, comeback, costs, worth } = sums.value;
  const few = [0, 1, 2].map(chances);
  const rest = {
    left: 1 - few.reduce((sum, one) => sum + one.left, 0),
    renewed: 1 - few.reduce((sum, one) => sum + one.renewed, 0),
  };
  const inMoney = (value: number) => printCount(value * givens.rate.value);
  const { bites, money, taken } = words;
  return (
    <>
      <BelowTable
        class="bills-bites"
        head={bites.head}
        caption={bites.caption({ cars })}
        columns={[bites.back, bites.left, bites.renewed]}
        rows={[...few, rest].map((one, i) => ({
          key: String(i),
          cells: [
            bites.rows[i],
            printCount(Math.abs(100 * one.left)),
            printCount(Math.abs(100 * one.renewed)),
          ],
        }))}
      >
        <p>{bites.says({ none: printCount(100 * noneLeft) })}</p>
      </BelowTable>
      <BelowTable
        class="bills-money"
        head={money.head}
        caption={money.caption({ rate: printCount(givens.rate.value) })}
        columns={[money.what, money.hours, money.money]}
        rows={[
          { key: 'comeback', cells: [money.comeback, printHours(comeback), inMoney(comeback)] },
          { key: 'costs', cells: [money.costs, printHours(costs), inMoney(costs)] },
          { key: 'worth', cells: [money.worth, printHours(worth), inMoney(worth)] },
        ]}
      />
      <div class="below-taken">
        <p>
          <strong>{taken.head}</strong> {taken.chances}
        </p>
        <p>{taken.alone}</p>
      </div>
    </>
  );
}
