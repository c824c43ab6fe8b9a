import { engage, makeCar, oneFault, PARK_BELOW_KMH } from '../../car/index.ts';
import { faultAmount } from '../../engine/index.ts';
import { percent, roadSpeed, seconds } from '../../quantity/quantities.ts';
import type { EngineNumber, EngineNumbers } from './entry.ts';

/** A cable that leaves the manual valve a third open. */
const MIS_SET = 0.75;

const stops = (tempC: number, severity: number): EngineNumber => {
  const car = makeCar({ faults: oneFault('feedRestriction', 100 * severity) });
  const { stoppedAfter } = engage(car, { tempC, rangeSelection: 'mechanical' });
  if (stoppedAfter === null) throw new Error('The lesson says that this turbine stops.');
  return {
    value: stoppedAfter,
    quantity: seconds,
    what: `from Drive to turbine stopped at ${tempC} °C, feed restriction ${severity}`,
  };
};

export const rangeSelectionNumbers: EngineNumbers = {
  'range-park-below': {
    value: PARK_BELOW_KMH,
    quantity: roadSpeed,
    what: 'the training controller drops the pawl in below this',
  },
  'range-feed-left': {
    value: 100 * faultAmount('feedRestriction', MIS_SET),
    quantity: percent,
    what: 'feed area left by the mis-set cable of the lesson',
  },
  'range-stops-healthy-20': stops(20, 0),
  'range-stops-healthy-frost': stops(-20, 0),
  'range-stops-mis-set-20': stops(20, MIS_SET),
  'range-stops-mis-set-100': stops(100, MIS_SET),
};
