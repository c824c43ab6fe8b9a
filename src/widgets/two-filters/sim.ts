import { HOT_C } from '../../car/cold-and-hot.ts';
import { printer } from '../../quantity/print.ts';
import { percent, speed, temperature } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { numberControl, temperatureControl } from '../../simulation/choices/number.ts';
import type { SimSpec } from '../../simulation/sim-spec.ts';
import { told, withIds } from '../../simulation/told.ts';
import { FAST_RPM, filtersAt, type FiltersGivens, type FiltersModel } from './model.ts';
import { isStarved, saysOf } from './print.ts';
import { words } from './words.en.ts';

export const FROST_C = 0;
const SPEED = { min: 600, max: 4000, step: 100 };
const MEDIA = { min: 20, max: 120, step: 5 };
const OPEN = { min: 20, max: 100, step: 5 };

const start: FiltersGivens = { temp: HOT_C, rpm: FAST_RPM, media: 50, open: 100, watch: 'pump' };
const end = { temp: FROST_C };

const printed = (system: UnitSystem, shares: { maker: number; unknown: number }) => {
  const print = printer(system);
  return {
    hot: print(HOT_C, temperature),
    frost: print(FROST_C, temperature),
    speed: print(FAST_RPM, speed),
    maker: print(100 * shares.maker, percent),
    unknown: print(100 * shares.unknown, percent),
  };
};
const { options, ...predict } = told(words.predict, (system) => {
  const { maker, unknown } = filtersAt({ ...start, ...end });
  return printed(system, { maker: maker.share, unknown: unknown.share });
});
const { controls } = words;

export const sim: SimSpec<FiltersGivens, FiltersModel> = {
  id: 'two-filters',
  title: words.title,
  linkVersion: 1,
  controls: [
    temperatureControl('temp'),
    numberControl('rpm', controls.rpm, speed, SPEED),
    numberControl('media', controls.media, percent, MEDIA, () => words.media),
    {
      kind: 'choice',
      key: 'watch',
      label: controls.watch,
      options: [
        { value: 'pump', words: words.watch.pump },
        { value: 'pour', words: words.watch.pour },
      ],
    },
    numberControl('open', controls.open, percent, OPEN, () => words.open),
  ],
  predict: {
    ...predict,
    options: withIds(options),
    start,
    end,
    outcome: (model) => {
      const { maker, unknown } = model.now.value;
      const hot = filtersAt({ ...start, media: model.givens.media.value }).unknown;
      return {
        option: isStarved(hot.share) ? 'half' : isStarved(unknown.share) ? 'cold' : 'alike',
        words: (system) =>
          words.outcome(printed(system, { maker: maker.share, unknown: unknown.share })),
      };
    },
  },
  says: saysOf,
};
