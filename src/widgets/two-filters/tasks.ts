import { COLD_C } from '../../car/cold-and-hot.ts';
import { drawnThrough, FIFTH, fluidIn, LIMIT_KPA, POUR, POUR_WARM_C } from '../../car/filters.ts';
import { fluidVolume } from '../../quantity/part-quantities.ts';
import { printer } from '../../quantity/print.ts';
import { percent, pressure, speed, temperature, times } from '../../quantity/quantities.ts';
import { watchTime } from '../../quantity/watch-time.ts';
import { aim, judged } from '../../simulation/judged.ts';
import type { TaskSpec } from '../../simulation/sim-spec.ts';
import { told } from '../../simulation/told.ts';
import { filtersAt, type FiltersGivens, type FiltersModel } from './model.ts';
import { FROST_C } from './sim.ts';
import { words } from './task-words.en.ts';

const fast = { temp: FROST_C, rpm: 3000, media: 50, open: 100, watch: 'pump' } as const;
const equal = { ...fast, temp: COLD_C, watch: 'pour' } as const;
const plugged = { ...fast, temp: POUR_WARM_C, watch: 'pour' } as const;

/** What the maker's part took on the shelf's cold fluid [s]. */
const ASKED_S = filtersAt(equal).maker.pour;
/** As near as a hand on a watch comes. */
const NEAR = 0.06;

/** Speed at which a filter comes to the limit in frost [rpm]. */
const fastest = (media: number): number =>
  (1000 * LIMIT_KPA) /
  drawnThrough({ media: media / 100, engineRpm: 1000 }, fluidIn(FROST_C)).wantedKpa;
/** Fluid in which half the media takes as long as all of it at another temperature [°C]. */
const warmFor = (seconds: number): number => {
  let temp: number = COLD_C;
  while (filtersAt({ ...equal, temp }).unknown.pour > seconds) temp += 1;
  return temp;
};

const texts = told(words.tasks, (system) => {
  const print = printer(system);
  const { media } = fast;
  return {
    frost: print(FROST_C, temperature),
    unknown: print(fastest(media), speed),
    maker: print(fastest(fast.open), speed),
    shop: print(COLD_C, temperature),
    seconds: print(ASKED_S, watchTime),
    amount: print(POUR.litres, fluidVolume),
    warm: print(warmFor(ASKED_S), temperature),
    same: print(filtersAt(equal).unknown.pour, watchTime),
    most: print(FIFTH, times),
    from: print(media / FIFTH, percent),
    to: print(media * FIFTH, percent),
  };
});
const { reached } = words;

export const tasks: readonly TaskSpec<FiltersGivens, FiltersModel>[] = [
  {
    id: 'fast-in-frost',
    ...texts.fast,
    start: fast,
    controls: ['rpm'],
    ...judged(({ now, givens }) => {
      const { wantedKpa } = now.value.unknown;
      return {
        is: aim({ value: wantedKpa, least: 0.93 * LIMIT_KPA, most: LIMIT_KPA, near: 8 }),
        reached: (system) => {
          const print = printer(system);
          return reached.lost({
            speed: print(givens.rpm.value, speed),
            lost: print(wantedKpa, pressure),
            limit: print(LIMIT_KPA, pressure),
          });
        },
      };
    }),
  },
  {
    id: 'equally-warm',
    ...texts.equal,
    start: equal,
    controls: ['temp'],
    ...judged(({ now, givens }) => {
      const { pour } = now.value.unknown;
      return {
        is: aim({
          value: pour,
          least: (1 - NEAR) * ASKED_S,
          most: (1 + NEAR) * ASKED_S,
          near: 3 * NEAR * ASKED_S,
        }),
        reached: (system) => {
          const print = printer(system);
          return reached.pour({
            temp: print(givens.temp.value, temperature),
            seconds: print(pour, watchTime),
          });
        },
      };
    }),
  },
  {
    id: 'beside-a-plugged-one',
    ...texts.plugged,
    start: plugged,
    controls: ['open', 'temp'],
    ...judged(({ now }) => {
      const { maker, unknown } = now.value;
      const ratio = unknown.pour / maker.pour;
      return {
        is: aim({ value: ratio, least: 1 / FIFTH, most: FIFTH, near: 0.15 }),
        reached: (system) => {
          const print = printer(system);
          return reached.ratio({
            old: print(maker.pour, watchTime),
            unknown: print(unknown.pour, watchTime),
            ratio: print(ratio, times),
          });
        },
      };
    }),
  },
];
