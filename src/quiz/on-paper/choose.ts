import type { Varied } from '../asked.ts';
import { shuffled } from '../seeded-order.ts';
import { chanceFor } from './seed.ts';

export interface LessonQuestions {
  readonly lesson: string;
  readonly questions: readonly Varied[];
}

/**
 * The questions of a sheet: as evenly from the lessons as they can give, and from each lesson an objective that was not
 * asked for yet before another. In the order of the lessons handed in.
 */
export function chooseQuestions(
  sets: readonly LessonQuestions[],
  count: number,
  seed: string,
): readonly Varied[] {
  const shares = sharesOf(sets, count, seed);
  return sets.flatMap(({ lesson, questions }) => {
    const left = [...shuffled(questions, chanceFor(seed, `from ${lesson}`))];
    const covered = new Set<string>();
    return Array.from({ length: shares.get(lesson) ?? 0 }, () => {
      const at = left.findIndex(({ objectives }) => objectives.some((one) => !covered.has(one)));
      const taken = left.splice(Math.max(at, 0), 1);
      for (const { objectives } of taken) for (const one of objectives) covered.add(one);
      return taken;
    }).flat();
  });
}

/** How many questions each lesson gives: one each in turns, until there are enough or none is left. */
function sharesOf(
  sets: readonly LessonQuestions[],
  count: number,
  seed: string,
): ReadonlyMap<string, number> {
  const shares = new Map<string, number>();
  const turns = shuffled(sets, chanceFor(seed, 'lessons'));
  let left = count;
  let given = -1;
  while (left > 0 && given !== 0) {
    given = 0;
    for (const { lesson, questions } of turns) {
      const has = shares.get(lesson) ?? 0;
      if (given === left || has === questions.length) continue;
      shares.set(lesson, has + 1);
      given += 1;
    }
    left -= given;
  }
  return shares;
}
