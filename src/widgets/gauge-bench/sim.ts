import { words as names } from '../../car/words.en.ts';
import { FAULT_IDS } from '../../engine/index.ts';
import { count } from '../../quantity/quantities.ts';
import { numberControl } from '../../simulation/choices/number.ts';
import type { SimSpec } from '../../simulation/sim-spec.ts';
import { told, withIds } from '../../simulation/told.ts';
import { CARS } from './cars.ts';
import { bit, EMPTY, makeModel, type GaugeGivens, type GaugeModel } from './model.ts';
import { readingAt, WHOLE_ROW, type Place } from './places.ts';
import { printCount } from './print.ts';
import { saysOf } from './says.ts';
import { words } from './words.en.ts';

const HOT_IDLE = 2;
const COLD_IDLE = 0;
const start = { ...EMPTY, car: '1', named: 'none', forward: bit(HOT_IDLE) } as const;
const end = {
  forward: bit(COLD_IDLE, HOT_IDLE),
  lineDrive: bit(HOT_IDLE),
  named: 'openPort',
} as const;

/** How many faults fit the one number, and how many are left with each partner. */
function left({ fitting }: GaugeModel) {
  const hot = readingAt('forward', HOT_IDLE);
  const cold = readingAt('forward', COLD_IDLE);
  const one = fitting([hot]).length;
  return {
    one,
    others: one - 1,
    cold: fitting([hot, cold]).length,
    all: fitting([hot, cold, readingAt('lineDrive', HOT_IDLE)]).length,
  };
}
const facts = () => {
  const model = makeModel();
  model.apply(start);
  const { one, others, cold, all } = left(model);
  return {
    one: printCount(one),
    others: printCount(others),
    cold: printCount(cold),
    all: printCount(all),
  };
};
const { options, ...predict } = told(words.predict, facts);
const { outcome } = told({ outcome: words.outcome }, facts);
/** Up to so many is "a few". */
const FEW = 5;

const row = (place: Place) =>
  numberControl(place, words.places[place], count, { min: 0, max: WHOLE_ROW, step: 1 });

export const sim: SimSpec<GaugeGivens, GaugeModel> = {
  id: 'gauge-bench',
  title: words.title,
  linkVersion: 1,
  controls: [
    {
      kind: 'choice',
      key: 'car',
      label: words.controls.car,
      as: 'select',
      options: CARS.map((_car, i) => ({
        value: String(i + 1),
        words: words.controls.number({ number: String(i + 1) }),
      })),
    },
    row('forward'),
    {
      kind: 'choice',
      key: 'named',
      label: words.controls.named,
      as: 'select',
      options: [
        { value: 'none', words: words.controls.none },
        ...FAULT_IDS.map((value) => ({ value, words: names.faults[value] })),
      ],
    },
    row('lineDrive'),
    row('reverse'),
    row('lineReverse'),
    row('high'),
    row('lineThird'),
    row('linePark'),
  ],
  predict: {
    ...predict,
    options: withIds(options),
    start,
    end,
    runMs: 600,
    outcome: (model) => {
      const { one } = left(model);
      return { option: one === 1 ? 'pump' : one <= FEW ? 'few' : 'half', words: outcome };
    },
  },
  says: saysOf,
};
