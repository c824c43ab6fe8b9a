/** What comes once the reader has pressed start: reads what arrived, and asks the questions. */
import { readQuestionSet, type QuestionSet } from '../../quiz/question-set.ts';
import { Retrieval } from './View.tsx';

export type Opened =
  | { readonly set: QuestionSet; readonly Player: typeof Retrieval }
  | {
      /** What came instead, and what the reader can do about it. */
      readonly sentence: string;
      readonly way: 'again' | 'reload';
    };

export function open(text: string, status: number, lesson: string): Opened {
  if (status !== 200) {
    return {
      sentence: `The site answered ${status} instead of the questions. It may have changed since you opened this page: reload it, then press start again.`,
      way: 'reload',
    };
  }
  try {
    return { set: readQuestionSet(text, lesson), Player: Retrieval };
  } catch {
    return {
      sentence:
        'Something other than the questions of this lesson arrived. If your network asks you to log in, do that first, then try again. If it does not, reload the page.',
      way: 'again',
    };
  }
}
