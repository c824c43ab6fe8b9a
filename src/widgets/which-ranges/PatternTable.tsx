import { COLD_C, HOT_C } from '../../car/cold-and-hot.ts';
import {
  conditionsOf,
  SHOP_TESTS,
  type ShopTest,
  type TestReadings,
  type Verdict,
} from '../../car/shop-tests.ts';
import { format, formatNumber } from '../../quantity/print.ts';
import { temperature } from '../../quantity/quantities.ts';
import type { Quantity } from '../../quantity/quantity.ts';
import { useUnits } from '../../ui/use-units.ts';
import { words } from './words.en.ts';

export interface PatternRow {
  readonly id: string;
  readonly label: string;
  readonly values: Readonly<Record<ShopTest, number>>;
  readonly verdicts: Readonly<Record<ShopTest, Verdict>>;
  /** What this row calls "gone", where another word fits better: a torque slips. */
  readonly gone?: string;
  /** Where the row is in another unit than the table. */
  readonly quantity?: Quantity;
}

interface PatternTableProps {
  readonly head: string;
  readonly caption: string;
  readonly name: string;
  readonly quantity: Quantity;
  readonly rows: readonly PatternRow[];
  /** What each test asks for, under its name: a higher number may be too low where a lower one is not. */
  readonly needs?: Readonly<Record<ShopTest, number>>;
}

/** One number of each test. */
export const across = (
  readings: Readonly<Record<ShopTest, TestReadings>>,
  read: (column: TestReadings) => number,
): Record<ShopTest, number> =>
  Object.fromEntries(SHOP_TESTS.map((test) => [test, read(readings[test])])) as Record<
    ShopTest,
    number
  >;

/**
 * Four columns of number and word, cold and hot under one head each. A real table: a pattern is
 * read along and across, and a screen reader has to say which column it is in.
 */
export function PatternTable({ head, caption, name, quantity, rows, needs }: PatternTableProps) {
  const system = useUnits();
  const { table } = words;
  return (
    <figure class="pattern">
      <figcaption>
        <strong>{head}</strong> {caption}
      </figcaption>
      <table aria-label={name}>
        <thead>
          <tr>
            <th scope="col" rowSpan={2}>
              {quantity[system].symbol}
            </th>
            <th scope="colgroup" colSpan={2} class="pattern-cold">
              {table.cold({ temp: format(COLD_C, temperature, system) })}
            </th>
            <th scope="colgroup" colSpan={2} class="pattern-hot">
              {table.hot({ temp: format(HOT_C, temperature, system) })}
            </th>
          </tr>
          <tr>
            {SHOP_TESTS.map((test) => (
              <th key={test} scope="col">
                {table[conditionsOf[test].point]}{' '}
                {needs && (
                  <span class="pattern-needs">
                    {table.needs({ amount: formatNumber(needs[test], quantity, system) })}
                  </span>
                )}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ id, label, values, verdicts, gone, quantity: own = quantity }) => (
            <tr key={id}>
              <th scope="row">
                {label}
                {own !== quantity && <span class="pattern-unit"> {own[system].symbol}</span>}
              </th>
              {SHOP_TESTS.map((test) => (
                <td key={test} class={`pattern-${verdicts[test]}`}>
                  <span class="pattern-number">{formatNumber(values[test], own, system)}</span>{' '}
                  <span class="pattern-word">
                    {(verdicts[test] === 'gone' && gone) || table.verdicts[verdicts[test]]}
                  </span>
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </figure>
  );
}
