/** Where a learner stands in the course, what a platform is told of it, and the text that brings it back. Pure. */

export interface Bank {
  /** In the order of the course. */
  readonly lessons: readonly { readonly id: string }[];
  readonly items: readonly { readonly id: string; readonly lesson: string }[];
}
export interface Standing {
  readonly done: ReadonlySet<string>;
  /** By question, whether it was right when it was last asked. */
  readonly right: ReadonlyMap<string, boolean>;
}
export type Status = 'incomplete' | 'completed' | 'passed';

export const nothingYet: Standing = { done: new Set(), right: new Map() };

/** From this score on a course that is done is passed. */
export const PASS = 80;
/** What `cmi.suspend_data` may hold in SCORM 1.2 [characters]. */
export const MOST_SUSPENDED = 4096;
const FORM = '1';

/**
 * From 0 to 100: of each lesson the share of the questions asked that were right the last time, a lesson without any counting as 0,
 * and the mean over the lessons.
 */
export function scoreOf({ lessons, items }: Bank, { right }: Standing): number {
  const shares = lessons.map(({ id }) => {
    const asked = items.flatMap((item) => (item.lesson === id ? (right.get(item.id) ?? []) : []));
    return asked.length === 0 ? 0 : asked.filter(Boolean).length / asked.length;
  });
  return lessons.length === 0
    ? 0
    : Math.round((100 * shares.reduce((sum, share) => sum + share, 0)) / lessons.length);
}

export function statusOf(bank: Bank, standing: Standing): Status {
  if (!bank.lessons.every(({ id }) => standing.done.has(id))) return 'incomplete';
  return scoreOf(bank, standing) >= PASS ? 'passed' : 'completed';
}

/** A sign a lesson and a sign a question: 1 done or right, 0 wrong, - neither. */
export const suspend = ({ lessons, items }: Bank, { done, right }: Standing): string =>
  [
    FORM,
    lessons.map(({ id }) => (done.has(id) ? '1' : '-')).join(''),
    items.map(({ id }) => (right.has(id) ? Number(right.get(id)) : '-')).join(''),
  ].join(';');

/** What cannot be read, or belongs to another bank, is left out. */
export function resume({ lessons, items }: Bank, text: string): Standing {
  const [form, done = '', right = ''] = text.split(';');
  if (form !== FORM) return nothingYet;
  return {
    done: new Set(
      done.length === lessons.length
        ? lessons.flatMap(({ id }, at) => (done[at] === '1' ? id : []))
        : [],
    ),
    right: new Map(
      right.length === items.length
        ? items.flatMap(({ id }, at) =>
            right[at] === '1' || right[at] === '0' ? [[id, right[at] === '1'] as const] : [],
          )
        : [],
    ),
  };
}
