/** Apart from the tables, so that only pages with a stopwatch carry it. */
import { shared, unit } from './units.ts';

/** As a watch in the hand has it. */
export const watchTime = shared(
  'time by the watch',
  unit('s', 1, [
    [0, 1],
    [10, 0],
  ]),
);
