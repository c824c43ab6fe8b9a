/** What a learner's answers say of them: what is solid, what is shaky, how sure against how right, day by day. */
import { certainties, type Certainty } from './certainty.ts';
import type { Result } from './result.ts';
import type { Day } from './schedule/day.ts';
import { isWeak, knownFrom, type Answered } from './schedule/schedule.ts';

export interface LessonRecord {
  readonly lesson: string;
  /** Questions in the bank. */
  readonly questions: number;
  /** Of them asked at least once. */
  readonly asked: number;
  /** Last answered right and not by a guess, and nine in ten would still know it today. */
  readonly solid: number;
  /** Asked, and the rest. */
  readonly shaky: number;
}

/**
 * Lesson by lesson, in the order of the bank.
 * @param today a whole number of days, not before the last answer (an earlier one counts as that day)
 * @example byLesson([{ id: 'a', lesson: 'l' }], [], 20454) // [{ lesson: 'l', questions: 1, asked: 0, solid: 0, shaky: 0 }]
 */
export function byLesson(
  items: readonly { readonly id: string; readonly lesson: string }[],
  answers: readonly Answered[],
  today: Day,
): readonly LessonRecord[] {
  const known = knownFrom(answers);
  const lessons = new Map<string, { questions: number; asked: number; solid: number }>();
  for (const { id, lesson } of items) {
    const row = lessons.get(lesson) ?? { questions: 0, asked: 0, solid: 0 };
    const one = known.get(id);
    row.questions += 1;
    if (one !== undefined) {
      row.asked += 1;
      if (!isWeak(one, today)) row.solid += 1;
    }
    lessons.set(lesson, row);
  }
  return [...lessons].map(([lesson, row]) => ({ lesson, ...row, shaky: row.asked - row.solid }));
}

/** The lessons to read next: the most shaky questions first, of even ones the earlier in the course. */
export const readNext = (records: readonly LessonRecord[], most = 3): readonly LessonRecord[] =>
  records
    .filter(({ shaky }) => shaky > 0)
    .sort((a, b) => b.shaky - a.shaky)
    .slice(0, most);

export interface Calibration {
  readonly certainty: Certainty;
  readonly said: number;
  readonly right: number;
}

/** How often each certainty was said, and how often it was right. */
export const calibrationOf = (
  answers: readonly { readonly result: Result; readonly certainty: Certainty }[],
): readonly Calibration[] =>
  certainties.map((certainty) => {
    const said = answers.filter((one) => one.certainty === certainty);
    return {
      certainty,
      said: said.length,
      right: said.filter(({ result }) => result === 'right').length,
    };
  });

export interface DayRecord {
  readonly day: Day;
  readonly answers: number;
  readonly right: number;
}

/** The days on which something was answered, the latest first. */
export function dayByDay(answers: readonly Answered[]): readonly DayRecord[] {
  const days = new Map<Day, { answers: number; right: number }>();
  for (const { day, result } of answers) {
    const row = days.get(day) ?? { answers: 0, right: 0 };
    row.answers += 1;
    if (result === 'right') row.right += 1;
    days.set(day, row);
  }
  return [...days].map(([day, row]) => ({ day, ...row })).sort((a, b) => b.day - a.day);
}
