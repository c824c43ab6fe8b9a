import { COLD_C, HOT_C } from '../../car/cold-and-hot.ts';
import { SHOP_TESTS, type ShopTest, type Verdict } from '../../car/shop-tests.ts';
import type { ComponentChildren } from 'preact';
import { format, formatNumber } from '../../quantity/print.ts';
import { temperature } from '../../quantity/quantities.ts';
import type { Quantity } from '../../quantity/quantity.ts';
import { useUnits } from '../../ui/use-units.ts';

export interface PatternRow {
  readonly id: string;
  readonly label: string;
  readonly values: Readonly<Record<ShopTest, number>>;
  readonly words: Readonly<Record<ShopTest, Verdict>>;
  /** What this row calls "gone", where another word fits better: a torque slips. */
  readonly gone?: string;
  /** Where the row is in another unit than the table. */
  readonly quantity?: Quantity;
}

interface PatternTableProps {
  readonly caption: ComponentChildren;
  readonly name: string;
  readonly quantity: Quantity;
  readonly rows: readonly PatternRow[];
}

/**
 * Four columns of number and word, cold and hot under one head each. A real table: a pattern is
 * read along and across, and a screen reader has to say which column it is in.
 */
export function PatternTable({ caption, name, quantity, rows }: PatternTableProps) {
  const system = useUnits();
  const { symbol } = quantity[system];
  return (
    <figure class="pattern">
      <figcaption>{caption}</figcaption>
      <table aria-label={name}>
        <thead>
          <tr>
            <th scope="col" rowSpan={2}>
              {symbol}
            </th>
            <th scope="colgroup" colSpan={2} class="pattern-cold">
              Cold, {format(COLD_C, temperature, system)}
            </th>
            <th scope="colgroup" colSpan={2} class="pattern-hot">
              Hot, {format(HOT_C, temperature, system)}
            </th>
          </tr>
          <tr>
            {SHOP_TESTS.map((test) => (
              <th key={test} scope="col">
                {test.endsWith('load') ? '1500 rpm' : 'idle'}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ id, label, values, words, gone = 'gone', quantity: own = quantity }) => (
            <tr key={id}>
              <th scope="row">
                {label}
                {own !== quantity && <span class="pattern-unit"> {own[system].symbol}</span>}
              </th>
              {SHOP_TESTS.map((test) => (
                <td key={test} class={`pattern-${words[test]}`}>
                  <span class="pattern-number">{formatNumber(values[test], own, system)}</span>{' '}
                  <span class="pattern-word">{words[test] === 'gone' ? gone : words[test]}</span>
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </figure>
  );
}
