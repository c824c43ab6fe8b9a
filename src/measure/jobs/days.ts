import { enteredAt } from '../../storage/jobs/job.ts';
import { dateOf } from '../../ui/dates.ts';

interface Entered {
  readonly id: string;
}

/** The day on which a reading was entered; empty where its id does not tell. */
const dayOf = ({ id }: Entered): string => {
  const at = enteredAt(id);
  return at === undefined ? '' : dateOf(at);
};

/** Readings under the day on which they were entered, `from` being the place of the first of them. */
export function byDay<Reading extends Entered>(
  all: readonly Reading[],
): readonly { readonly day: string; readonly from: number; readonly some: readonly Reading[] }[] {
  const starts = all.flatMap((one, n) => {
    const before = all[n - 1];
    return before !== undefined && dayOf(before) === dayOf(one) ? [] : [n];
  });
  return starts.map((from, n) => {
    const some = all.slice(from, starts[n + 1]);
    return { day: some.map(dayOf)[0] ?? '', from, some };
  });
}

/** Where the days of a column of readings are printed: one for all of them over it, several each beside its reading. */
export function daysOfColumn(all: readonly Entered[]): {
  readonly over: string;
  readonly beside: (one: Entered) => string;
} {
  const days = new Set(all.map(dayOf));
  const [over = ''] = days;
  return days.size > 1 ? { over: '', beside: dayOf } : { over, beside: () => '' };
}
