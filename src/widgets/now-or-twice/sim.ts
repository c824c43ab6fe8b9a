import { hours } from '../../quantity/part-quantities.ts';
import { count } from '../../quantity/quantities.ts';
import { numberControl } from '../../simulation/choices/number.ts';
import type { SimSpec } from '../../simulation/sim-spec.ts';
import { told, withIds } from '../../simulation/told.ts';
import { FILTER, SOLENOIDS, sumsAt, type OpenGivens, type OpenModel } from './model.ts';
import { cars, printCount, printHours, saysOf } from './print.ts';
import { words } from './words.en.ts';

const ACCESS = { min: 0.5, max: 30, step: 0.5 };
const EXTRA = { min: 0, max: 10, step: 0.1 };
const IN_100 = { min: 0, max: 100, step: 1 };
const MONEY = { min: 0, max: 2000, step: 10 };
const RATE = { min: 10, max: 1000, step: 10 };

const bills = (state: Partial<OpenGivens>) => ({
  cars,
  left: printHours(sumsAt(state).left),
  filter: printHours(sumsAt({ ...state, price: FILTER.price }).renewed),
  solenoids: printHours(sumsAt({ ...state, price: SOLENOIDS.price }).renewed),
});

const { options, ...predict } = told(words.predict, () => ({
  ...bills({}),
  access: printHours(FILTER.access),
  before: printCount(FILTER.left),
  after: printCount(FILTER.renewed),
  filterCosts: printHours(sumsAt({}).costs),
  solenoidsCost: printHours(sumsAt(SOLENOIDS).costs),
  worth: printHours(sumsAt({}).worth),
}));
const { controls } = words;

export const sim: SimSpec<OpenGivens, OpenModel> = {
  id: 'now-or-twice',
  title: words.title,
  linkVersion: 1,
  controls: [
    numberControl('access', controls.access, hours, ACCESS),
    numberControl('left', controls.left, count, IN_100),
    numberControl('renewed', controls.renewed, count, IN_100),
    numberControl('extra', controls.extra, hours, EXTRA),
    numberControl('price', controls.price, count, MONEY),
    numberControl('rate', controls.rate, count, RATE),
    numberControl('beside', controls.beside, count, MONEY),
  ],
  predict: {
    ...predict,
    options: withIds(options),
    start: FILTER,
    end: SOLENOIDS,
    outcome: ({ state, sums }) => {
      const filterPays = sumsAt({ ...state.value, price: FILTER.price }).pays;
      return {
        option: sums.value.pays ? 'both' : filterPays ? 'filter' : 'neither',
        words: words.outcome(bills(state.value)),
      };
    },
  },
  says: (model) => saysOf(model),
};
