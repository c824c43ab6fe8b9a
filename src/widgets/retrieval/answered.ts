import { dayOf } from '../../quiz/schedule/day.ts';
import type { Answered } from '../../quiz/schedule/schedule.ts';
import type { RetrievalAnswer } from '../../storage/answer.ts';
import type { AnswersRead, KeptAnswer } from '../../storage/read-answers.ts';

type Retrieval = KeptAnswer & { readonly answer: RetrievalAnswer };

/** The answers to questions among all that are kept. */
export const retrievalsOf = (read: AnswersRead | undefined): readonly Retrieval[] =>
  (read?.answers ?? []).filter((one): one is Retrieval => one.answer.kind === 'retrieval');

/** As the schedule reads them: by the learner's own days. */
export const answeredFrom = (
  retrievals: readonly Retrieval[],
  minutesWest: (at: number) => number,
): readonly Answered[] =>
  retrievals.map(({ at, answer: { item, result, certainty } }) => ({
    item,
    day: dayOf(at, minutesWest(at)),
    result,
    certainty,
  }));
