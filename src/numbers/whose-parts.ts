import { COLD_C } from '../car/cold-and-hot.ts';
import {
  drawnThrough,
  fluidIn,
  LIMIT_KPA,
  POUR,
  POUR_WARM_C,
  pourSeconds,
  starvedBelow,
} from '../car/filters.ts';
import { read } from './ask.ts';
import { degC, entry, kPa, lmin, percent, rpm, type Entries } from './entry.ts';

const FROST_C = 0;
const FAST_RPM = 3000;
/** The maker's part, and one with half of its media. */
const PARTS = { full: 1, half: 0.5 } as const;
/** Half the media is twice the resistance, as a severity of the fault: a factor of 1 to 60. */
const HALF = { filter: { severity: 1 / 59 } };

const watch = (value: number, what: string) => entry('watchTime', value, what);
const drawn = (media: number, tempC: number) =>
  drawnThrough({ media, engineRpm: FAST_RPM }, fluidIn(tempC));
const below = (media: number): number => {
  const found = starvedBelow({ media, engineRpm: FAST_RPM });
  if (found === null) throw new Error('The course needs a temperature here.');
  return found;
};
const frosty = (faults = {}) => read({ faults, tempC: FROST_C, engineRpm: FAST_RPM });

/** What a task says that was read by the watch [s]. */
const ASKED = { maker: 12, near: 13 };

export const whoseParts: Entries = {
  'filters-limit': kPa(LIMIT_KPA, 'what the air can spare to push fluid through the filter'),
  'filters-fast': rpm(FAST_RPM, 'engine speed of the two filters'),
  'filters-poured': entry('fluidVolume', POUR.litres, 'poured through each filter'),
  ...Object.fromEntries(
    Object.entries(PARTS).flatMap(([name, media]) => [
      [`filter-${name}-lost-40`, kPa(drawn(media, POUR_WARM_C).lostKpa, `${name} media, 40 °C`)],
      [`filter-${name}-below`, degC(below(media), `starved below, 3000 rpm, ${name} media`)],
      [`pour-${name}-20`, watch(pourSeconds(media, fluidIn(COLD_C)), `pour, 20 °C, ${name}`)],
      [`pour-${name}-40`, watch(pourSeconds(media, fluidIn(POUR_WARM_C)), `pour, 40 °C, ${name}`)],
    ]),
  ),
  'filter-full-lost-0': kPa(drawn(1, FROST_C).lostKpa, 'all the media, 0 °C'),
  'filter-half-got-0': percent(100 * drawn(0.5, FROST_C).share, 'pump gets, half the media, 0 °C'),
  'filter-half-line-0': kPa(frosty(HALF).lineKpa, 'line in Drive, idle command, 0 °C, 3000 rpm'),
  'filter-full-left-0': lmin(frosty().leftOverLmin, 'left over, 0 °C, 3000 rpm, all the media'),
  'filter-half-left-0': lmin(frosty(HALF).leftOverLmin, 'the same with half the media'),
  'pour-asked-maker': watch(ASKED.maker, 'pour of a maker’s part, of a task'),
  'pour-asked-near': watch(ASKED.near, 'pour of a part that is alike, of a task'),
};
