import { printer } from '../../quantity/print.ts';
import { POUR } from '../../car/filters.ts';
import { fluidVolume } from '../../quantity/part-quantities.ts';
import { percent, pressure, speed, temperature, times } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { watchTime } from '../../quantity/watch-time.ts';
import type { FiltersModel, Part } from './model.ts';
import { words } from './words.en.ts';

const { says } = words;

/** A share that prints as all of it is all of it. */
export const isStarved = (share: number): boolean => share < 1;

const pumpWords = ({ now }: FiltersModel, part: Part, system: UnitSystem): string => {
  const print = printer(system);
  const { share, lostKpa } = now.value[part];
  return isStarved(share)
    ? says.starved[part]({ share: print(100 * share, percent) })
    : says.gets[part]({ lost: print(lostKpa, pressure) });
};

export function saysOf(model: FiltersModel, system: UnitSystem, inTask = false): string {
  const print = printer(system);
  const { temp, rpm, watch } = model.givens;
  const at = print(temp.value, temperature);
  if (watch.value === 'pump') {
    const where = says.where({ temp: at, speed: print(rpm.value, speed) });
    return [where, pumpWords(model, 'maker', system), pumpWords(model, 'unknown', system)].join(
      ' ',
    );
  }
  // A task on the pour asks for these numbers.
  if (inTask) return says.pours({ temp: at });
  const { maker, unknown } = model.now.value;
  return says.pour({
    temp: at,
    amount: print(POUR.litres, fluidVolume),
    maker: print(maker.pour, watchTime),
    unknown: print(unknown.pour, watchTime),
    ratio: print(unknown.pour / maker.pour, times),
  });
}
