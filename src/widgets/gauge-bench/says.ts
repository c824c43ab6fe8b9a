import { TENTH } from '../../car/shop-tests.ts';
import { listOf } from '../../quantity/lists.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import type { GaugeModel } from './model.ts';
import type { Pair } from './pairs.ts';
import { faultName, printCount, printShare } from './print.ts';
import { words } from './words.en.ts';

const { says } = words;
/** Shares nearer than this are alike. */
const APART = 1 - TENTH;
/** More names than this are counted, not listed. */
const MOST_LISTED = 2;

/** How far apart the two readings of a pair are, each against its command. */
export const apartIn = ({ shareOf }: GaugeModel, { first, second }: Pair): number =>
  Math.abs(shareOf(first) - shareOf(second));

export function pairSays(model: GaugeModel, pair: Pair, system: UnitSystem): string {
  const [first, second] = [model.shareOf(pair.first), model.shareOf(pair.second)];
  const lower = Math.min(first, second);
  const is =
    lower >= TENTH
      ? 'right'
      : Math.abs(first - second) < APART
        ? 'low'
        : first < second
          ? 'first'
          : 'second';
  return says.pairs[pair.kind][is]({
    first: printShare(first, system),
    second: printShare(second, system),
  });
}

function verdict({ givens, car, fits, soundFits }: GaugeModel): string {
  const named = givens.named.value;
  if (named === 'none') return '';
  const name = faultName(named);
  if (named !== car.value.fault) {
    return fits.value.includes(named) ? says.sameNumbers({ name }) : says.cannot({ name });
  }
  const others = fits.value.filter((other) => other !== named);
  const sound = soundFits.value ? ` ${says.sound}` : '';
  if (others.length === 0) return says.settled({ name }) + sound;
  return (
    (others.length > MOST_LISTED
      ? says.unprovedMany({ name, others: printCount(others.length) })
      : says.unproved({ name, others: listOf(others.map(faultName)) })) + sound
  );
}

/** What the last reading says beside the partner that it differs from most; or what the sheet says to the name. */
export function saysOf(model: GaugeModel, system: UnitSystem): string {
  const { shown, pairs, givens, shareOf } = model;
  const now = shown.value;
  if (now === null) return says.empty;
  if (givens.named.value !== 'none') return verdict(model);
  const own = pairs.value.filter(({ first, second }) => first === now || second === now);
  const [pair] = own.toSorted((one, other) => apartIn(model, other) - apartIn(model, one));
  return pair === undefined
    ? says.alone({ share: printShare(shareOf(now), system) })
    : pairSays(model, pair, system);
}
