import { engage, makeCar, oneFault, PARK_BELOW_KMH } from '../car/index.ts';
import { faultAmount } from '../engine/index.ts';
import { entry, percent, seconds, type Entries } from './entry.ts';

/** A lever or cable that leaves the manual valve part of the feed area. */
const MIS_SET = 75;

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
};
