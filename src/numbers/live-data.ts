import { fallsIn, LIVE_RECORDINGS, standsAfter } from '../car/live-cars.ts';
import { recordSome } from '../car/record.ts';
import { bringRecordings } from '../car/recordings.ts';
import { readingsEach, spreadOf } from '../car/sampling.ts';
import { entry, seconds, type Entries } from './entry.ts';

bringRecordings(recordSome(LIVE_RECORDINGS));

/** The line of the lesson [values a second], and a list that is long or short. */
const LINE = 20;
const LONG = 10;
const SHORT = 2;
const each = (items: number) => readingsEach(LINE, items);
/** Between two rows [s]. */
const long = 1 / each(LONG);
const short = 1 / each(SHORT);

export const liveData: Entries = {
  'live-each-long': entry('rate', each(LONG), 'readings a second, ten items on 20 values'),
  'live-each-six': entry('rate', each(6), 'readings a second, six items on 20 values'),
  'live-each-short': entry('rate', each(SHORT), 'readings a second, two items on 20 values'),
  'live-step-long': seconds(long, 'between two rows, ten items on 20 values'),
  'live-step-short': seconds(short, 'between two rows, two items on 20 values'),
  // The stop is seen two rows after the first in Drive; each end can lie anywhere in its step.
  'live-low': seconds((2 - 1) * long, 'least time that the rows of the trap allow'),
  'live-high': seconds((2 + 1) * long, 'longest time that the rows of the trap allow'),
  'live-doubt-short': seconds(2 * short, 'both ends together, two items on 20 values'),
  'live-stop-hot': seconds(standsAfter('hot'), 'turbine under 30 rpm, healthy, 100 °C'),
  'live-stop-friction': seconds(standsAfter('friction'), 'turbine under 30 rpm, worn plates'),
  'live-fall': seconds(fallsIn('hot'), 'turbine pulled down, healthy, 100 °C'),
  'live-spread': seconds(spreadOf(long), 'spread of one end, a row every 0.5 s'),
};
