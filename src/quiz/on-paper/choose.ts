import type { Asked } from '../asked.ts';
import { pickRound } from '../pick-round.ts';
import { shuffled } from '../seeded-order.ts';
import { chanceFor } from './seed.ts';

export interface LessonQuestions {
  readonly lesson: string;
  readonly questions: readonly Asked[];
}

/**
 * The questions of a sheet: as evenly from the lessons as they can give, and from each what its own round would ask,
 * every objective and a new setting first. In the order of the lessons handed in.
 */
export function chooseQuestions(
  sets: readonly LessonQuestions[],
  count: number,
  seed: string,
): readonly Asked[] {
  const quota = new Map(sets.map(({ lesson }) => [lesson, 0]));
  const turns = shuffled(sets, chanceFor(seed, 'lessons'));
  let left = Math.min(
    count,
    sets.reduce((sum, { questions }) => sum + questions.length, 0),
  );
  while (left > 0) {
    for (const { lesson, questions } of turns) {
      const has = quota.get(lesson) ?? 0;
      if (left === 0 || has === questions.length) continue;
      quota.set(lesson, has + 1);
      left -= 1;
    }
  }
  return sets.flatMap(({ lesson, questions }) =>
    pickRound(questions, chanceFor(seed, `from ${lesson}`), new Set(), quota.get(lesson)),
  );
}
