/** What a simulation is handed that its page solves when the site is built, by its id. */
import { readings } from '../../../car/complaint-readings.ts';
import { LIVE_RECORDINGS } from '../../../car/live-cars.ts';
import { recordAll, recordSome } from '../../../car/record.ts';
import { solveBay } from '../../../cases/solve-bay.ts';
import { solveReadings } from '../../../widgets/before-and-after/solve-readings.ts';
import { firstRun } from '../../../widgets/engagement/first-run.ts';
import { solveCars } from '../../../widgets/gauge-bench/solve-cars.ts';
import { solveSeals } from '../../../widgets/two-seals/solve-seals.ts';
import { openingText } from '../../../widgets/whole-car/opening.ts';

const solved: Readonly<Record<string, () => Record<string, unknown>>> = {
  'before-and-after': () => ({ readings: solveReadings() }),
  'controller-sees': () => ({ recordings: recordAll() }),
  engagement: () => ({ first: firstRun() }),
  'gauge-bench': () => ({ cars: solveCars() }),
  'sampling-trap': () => ({ recordings: recordSome(LIVE_RECORDINGS) }),
  'test-order': () => ({ suspects: solveBay() }),
  'three-checks': () => ({ readings: readings() }),
  'two-seals': () => ({ seals: solveSeals() }),
  'whole-car': () => ({ opening: openingText() }),
};

export const solvedFor = (id: string): Record<string, unknown> => solved[id]?.() ?? {};
