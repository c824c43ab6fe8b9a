import { readQuestionSet, type QuestionSet } from '../quiz/question-set.ts';
import { questionsAddress } from '../widgets/retrieval/address.ts';
import { load, type Loaded } from './load.ts';

/** The questions of some lessons, or why one of them did not come. */
export async function loadSets(
  base: string,
  lessons: readonly string[],
): Promise<Loaded<readonly QuestionSet[]>> {
  const all = await Promise.all(
    lessons.map((lesson) =>
      load(questionsAddress(base, lesson), (text) => readQuestionSet(text, lesson)),
    ),
  );
  const got: QuestionSet[] = [];
  for (const one of all) {
    if ('miss' in one) return one;
    got.push(one.got);
  }
  return { got };
}
