import { COLD_C } from '../car/cold-and-hot.ts';
import {
  drawnThrough,
  FIFTH,
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

const watch = (value: number, what: string, wrong = {}) => entry('watchTime', value, what, wrong);
const drawn = (media: number, tempC: number) =>
  drawnThrough({ media, engineRpm: FAST_RPM }, fluidIn(tempC));
const below = (media: number): number => {
  const found = starvedBelow({ media, engineRpm: FAST_RPM });
  if (found === null) throw new Error('The course needs a temperature here.');
  return found;
};
/** Speed from which the pump is starved in frost [rpm]. */
const from = (media: number): number => (FAST_RPM * LIMIT_KPA) / drawn(media, FROST_C).wantedKpa;
const frosty = (faults = {}) => read({ faults, tempC: FROST_C, engineRpm: FAST_RPM });

/** What questions say that was read by the watch [s]. */
const ASKED = { maker: 12, near: 13, unknown: 30 };

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
  'filter-half-from': rpm(from(0.5), 'starved from, 0 °C, half the media'),
  'filter-half-line-0': kPa(frosty(HALF).lineKpa, 'line in Drive, idle command, 0 °C, 3000 rpm'),
  'filter-full-left-0': lmin(frosty().leftOverLmin, 'left over, 0 °C, 3000 rpm, all the media'),
  'filter-half-left-0': lmin(frosty(HALF).leftOverLmin, 'the same with half the media'),
  'filter-quarter-from': rpm(from(0.25), 'starved from, 0 °C, a quarter of the media', {
    'same-speed': { mistake: 'leave the speed where it was', value: from(0.5) },
    'other-way': { mistake: 'let less media stand more speed', value: 2 * from(0.5) },
  }),
  'pour-asked-maker': watch(ASKED.maker, 'pour of a maker’s part, of a question'),
  'pour-asked-near': watch(ASKED.near, 'pour of a part that is alike, of a task'),
  'pour-asked-unknown': watch(ASKED.unknown, 'pour of an unknown part, of a question'),
  'pour-longest': watch(FIFTH * ASKED.maker, 'longest pour within a fifth of that', {
    'as-long': { mistake: 'allow nothing', value: ASKED.maker },
    half: { mistake: 'allow half as much again', value: 1.5 * ASKED.maker },
  }),
  'media-of-asked': percent((100 * ASKED.maker) / ASKED.unknown, 'media by those two pours', {
    upside: { mistake: 'divide the other way', value: (100 * ASKED.unknown) / ASKED.maker },
    'by-difference': {
      mistake: 'take the difference of the two times',
      value: (100 * (ASKED.unknown - ASKED.maker)) / ASKED.unknown,
    },
  }),
};
