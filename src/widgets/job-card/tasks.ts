import {
  airAfter,
  driveAfter,
  missingBefore,
  pullsIn,
  STEPS,
  type Step,
} from '../../car/back-together.ts';
import { WINDOW_C } from '../../car/pan.ts';
import { dimension } from '../../quantity/part-quantities.ts';
import { printer } from '../../quantity/print.ts';
import { percent, temperature } from '../../quantity/quantities.ts';
import { judged } from '../../simulation/judged.ts';
import type { TaskSpec } from '../../simulation/sim-spec.ts';
import { told } from '../../simulation/told.ts';
import { cardOf, cardWithout, type JobCardGivens, type JobCardModel } from './model.ts';
import { printCount, stepsOf } from './print.ts';
import { words } from './task-words.en.ts';

const { reached } = words;
const BEGUN = ['clean', 'lip', 'rings', 'drums', 'air'] as const satisfies readonly Step[];
/** Within a tenth of the sound car: its pressure (common practice, no source). */
const TENTH = 0.9;

/** In how many orders the card lets all lines be signed. */
function ordersFrom(done: readonly Step[]): number {
  if (done.length === STEPS.length) return 1;
  return STEPS.filter(
    (step) => !done.includes(step) && missingBefore(step, done) === undefined,
  ).reduce((sum, step) => sum + ordersFrom([...done, step]), 0);
}

const texts = told(words.tasks, (system) => {
  const print = printer(system);
  return {
    orders: printCount(ordersFrom([])),
    lip: print(airAfter(['lip']), percent),
    ring: print(airAfter(['rings']), percent),
    sister: print(airAfter([]), percent),
    over: print(driveAfter(['level']).stickMm, dimension),
    window: print(WINDOW_C.middle, temperature),
  };
});

export const tasks: readonly TaskSpec<JobCardGivens, JobCardModel>[] = [
  {
    id: 'body-on',
    ...texts.on,
    start: { ...cardOf(BEGUN), strict: true },
    controls: ['inside', 'after'],
    ...judged(({ done, skipped }) => {
      if (skipped.value.length > 0)
        return { is: 'not-that', reached: reached.hidden({ steps: stepsOf(skipped.value) }) };
      if (!done.value.includes('body')) return null;
      return { is: done.value.includes('pan') ? 'done' : 'nearly', reached: reached.pan };
    }),
  },
  {
    id: 'drive-alone',
    ...texts.forward,
    start: { ...cardWithout(), strict: false },
    controls: ['inside'],
    ...judged(({ skipped, driven }) => {
      const read = driven.value;
      if (read === null || skipped.value.length === 0) return null;
      if (skipped.value.length > 1) return { is: 'not-that', reached: reached.many };
      if (!pullsIn(read.cold)) return { is: 'not-that', reached: reached.coldToo };
      if (read.hot.forward.pulls) return { is: 'not-that', reached: reached.right };
      const kept = read.hot.reverse.kPa >= TENTH * driveAfter([]).hot.reverse.kPa;
      return { is: kept ? 'done' : 'not-that', reached: reached.reverseToo };
    }),
  },
  {
    id: 'no-gauge-shows',
    ...texts.silent,
    start: { ...cardWithout(), strict: false },
    controls: ['inside', 'after'],
    ...judged(({ skipped, driven }) => {
      const read = driven.value;
      if (read === null || skipped.value.length === 0) return null;
      if (skipped.value.length > 1) return { is: 'not-that', reached: reached.many };
      if (!pullsIn(read.hot)) return { is: 'not-that', reached: reached.slips };
      return { is: read.stickMm > 0 ? 'done' : 'not-that', reached: reached.stick };
    }),
  },
];
