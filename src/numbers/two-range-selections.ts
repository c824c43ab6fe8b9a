import { engage, makeCar, oneFault, PARK_BELOW_KMH } from '../car/index.ts';
import { faultAmount } from '../engine/index.ts';
import { tapKpa } from './ask.ts';
import { entry, kPa, percent, seconds, type Entries, type WrongRules } from './entry.ts';

/** A lever or cable that leaves the manual valve part of the feed area: that of the lesson, and that of its questions. */
const [MIS_SET, WORSE] = [75, 90];

const feedLeft = (restricted: number): number =>
  100 * faultAmount('feedRestriction', restricted / 100);
const stops = (tempC: number, restricted: number) =>
  seconds(
    engage(makeCar({ faults: oneFault('feedRestriction', restricted) }), {
      tempC,
      rangeSelection: 'mechanical',
    }).stoppedAfter,
    `from Drive to turbine stopped at ${tempC} °C, feed restriction ${restricted} %`,
  );
const worse = (tempC: number, wrong?: WrongRules) =>
  kPa(
    tapKpa({ faults: oneFault('feedRestriction', WORSE), tempC }),
    `forward clutch at idle, cable of the questions, ${tempC} °C`,
    wrong,
  );

export const twoRangeSelections: Entries = {
  'range-park-below': entry(
    'roadSpeed',
    PARK_BELOW_KMH,
    'the training controller drops the pawl in below this',
  ),
  'range-feed-left': percent(feedLeft(MIS_SET), 'feed area left by the mis-set cable'),
  'range-stops-healthy-20': stops(20, 0),
  'range-stops-healthy-frost': stops(-20, 0),
  'range-stops-mis-set-20': stops(20, MIS_SET),
  'range-stops-mis-set-100': stops(100, MIS_SET),
  'cable-area-left': percent(feedLeft(WORSE), 'feed area left by the cable of the questions'),
  'cable-20': worse(20),
  'cable-100': worse(100, {
    unchanged: {
      mistake: 'let a narrow way fill the clutch to full pressure hot as well',
      value: tapKpa({ tempC: 100 }),
    },
    'area-share': {
      mistake: 'cut the pressure by the same share as the area',
      value: 4 * feedLeft(WORSE),
    },
  }),
};
