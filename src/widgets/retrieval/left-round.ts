/** A round of a lesson that was left before its end, by a reload or a flat battery. */
import { readAnswers } from '../../storage/answers.ts';
import {
  lessonRoundsKeeper,
  roundOfLesson,
  withRound,
  type LessonRound,
} from '../../storage/lesson-rounds.ts';
import type { Earlier } from './model.ts';

export interface LeftRound extends LessonRound {
  /** The answers that were given, in their order. */
  readonly answers: readonly Earlier[];
}

/** The round of this lesson that waits, if one does. */
export async function leftRound(
  lesson: string,
  { keeper = lessonRoundsKeeper(), read = readAnswers, now = Date.now() } = {},
): Promise<LeftRound | undefined> {
  const round = roundOfLesson(keeper.read().data, lesson, now);
  if (round === undefined) return undefined;
  const { answers } = await read();
  return {
    ...round,
    answers: answers.flatMap(({ answer }) =>
      answer.kind === 'retrieval' && answer.lesson === lesson && answer.seed === round.seed
        ? [answer]
        : [],
    ),
  };
}

/** Without a round: it is over. */
export function keepRound(lesson: string, round?: Omit<LessonRound, 'begun'>): void {
  const now = Date.now();
  lessonRoundsKeeper().update((rounds) =>
    withRound(rounds, lesson, round && { ...round, begun: now }, now),
  );
}
