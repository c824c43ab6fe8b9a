import { COMPLAINT_IDS, complaintOf, type ComplaintId } from '../../cases/complaints.ts';
import { listOf } from '../../quantity/lists.ts';
import { judged } from '../../simulation/judged.ts';
import type { TaskSpec, Verdict } from '../../simulation/sim-spec.ts';
import { told } from '../../simulation/told.ts';
import { carWith, type ThreeChecksGivens, type ThreeChecksModel } from './model.ts';
import { causeName, printCount, printMinutes } from './print.ts';
import { withSeal } from './sim.ts';
import { words } from './task-words.en.ts';

const { reached } = words;

const boost = { complaint: 'noReverse', car: carWith('noReverse', 'boost'), taken: 0 } as const;
/** Has the seal on no list. */
const any = { complaint: 'lateCold', car: '5', taken: 0 } as const;
const flare = { complaint: 'flare', car: carWith('flare', 'comingLeak'), taken: 0 } as const;

const minutesOf = (complaint: ComplaintId, ...keys: readonly string[]): number =>
  keys.reduce((sum, key) => sum + (complaintOf(complaint).checks[key]?.minutes ?? 0), 0);
const mostReverse = minutesOf('noReverse', 'range', 'line');
const mostFlare = minutesOf('flare', 'learned', 'warmth');

const texts = told(words.tasks, () => ({
  mostReverse: printMinutes(mostReverse),
  tap: printMinutes(minutesOf('noReverse', 'tap')),
  mostFlare: printMinutes(mostFlare),
  leastFlare: printMinutes(minutesOf('flare', 'warmth')),
  all: printCount(COMPLAINT_IDS.length),
  few: printCount(withSeal.length),
  names: listOf(['comingLeak', 'accumulator'].map((one) => causeName('flare', one))),
}));

/** Too many minutes, or so many spent and so many left. */
function spent({ minutes, left }: ThreeChecksModel, most: number): Verdict {
  const told = printMinutes(minutes.value);
  if (minutes.value > most) return { is: 'too-late', reached: reached.late({ minutes: told }) };
  const count = left.value.length;
  return {
    is: 'not-that',
    reached: reached.minutes({ minutes: told, left: printCount(count) }),
  };
}

export const tasks: readonly TaskSpec<ThreeChecksGivens, ThreeChecksModel>[] = [
  {
    id: 'no-reverse',
    ...texts.reverse,
    start: boost,
    controls: ['taken'],
    ...judged((model) => {
      if (model.taken.value.length === 0) return null;
      const now = spent(model, mostReverse);
      const isDone = now.is !== 'too-late' && model.left.value.length === 1;
      return isDone ? { ...now, is: 'done' } : now;
    }),
  },
  {
    id: 'seal-off',
    ...texts.seal,
    start: any,
    controls: ['complaint', 'taken'],
    ...judged(({ complaint, taken, left }) => {
      if (taken.value.length === 0) return null;
      if (!complaint.value.causes.includes('seal'))
        return { is: 'not-that', reached: reached.notHere };
      if (taken.value.length > 1) return { is: 'nearly', reached: reached.many };
      return { is: left.value.includes('seal') ? 'not-that' : 'done', reached: reached.still };
    }),
  },
  {
    id: 'outside-ends',
    ...texts.end,
    start: flare,
    controls: ['taken'],
    ...judged((model) => {
      if (model.taken.value.length === 0) return null;
      const now = spent(model, mostFlare);
      if (now.is === 'too-late') return now;
      return model.goesOn.value ? { is: 'nearly', reached: reached.goes } : { ...now, is: 'done' };
    }),
  },
];
