import { count } from '../../quantity/quantities.ts';
import { numberControl } from '../../simulation/choices/number.ts';
import type { SimSpec } from '../../simulation/sim-spec.ts';
import { told, withIds } from '../../simulation/told.ts';
import { SEAL, shelfAt, type ShelfGivens, type ShelfModel } from './model.ts';
import { printCount, printIn100, saysOf } from './print.ts';
import { words } from './words.en.ts';

const KEEP = { min: 0, max: 12, step: 1 };
const A_YEAR = { min: 1, max: 150, step: 1 };
const DAYS = { min: 1, max: 60, step: 1 };
const PRICE = { min: 0, max: 2000, step: 2 };

const found = (state: Partial<ShelfGivens>) => ({
  one: printIn100(shelfAt({ ...state, keep: 1 }).found),
  two: printIn100(shelfAt({ ...state, keep: 2 }).found),
  three: printIn100(shelfAt({ ...state, keep: 3 }).found),
});
const { options, ...predict } = told(words.predict, () => ({
  ...found({}),
  aYear: printCount(SEAL.aYear),
  days: printCount(SEAL.days),
}));
const { controls } = words;

export const sim: SimSpec<ShelfGivens, ShelfModel> = {
  id: 'stock-or-order',
  title: words.title,
  linkVersion: 1,
  controls: [
    numberControl('keep', controls.keep, count, KEEP),
    numberControl('aYear', controls.aYear, count, A_YEAR),
    numberControl('days', controls.days, count, DAYS),
    numberControl('price', controls.price, count, PRICE),
  ],
  predict: {
    ...predict,
    options: withIds(options),
    start: SEAL,
    end: { keep: 3 },
    outcome: ({ state, shelf }) => {
      const { enough } = shelf.value;
      return {
        option: enough <= 1 ? 'one' : enough === 2 ? 'two' : enough === 3 ? 'three' : 'more',
        words: words.outcome(found(state.value)),
      };
    },
  },
  says: (model) => saysOf(model),
};
