/** What comes once the reader has pressed start: reads what arrived, and asks the questions. */
import { readQuestionSet, type QuestionSet } from '../../quiz/question-set.ts';
import { words } from './player/words.en.ts';
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
      sentence: words.otherAnswer(String(status)),
      way: 'reload',
    };
  }
  try {
    return { set: readQuestionSet(text, lesson), Player: Retrieval };
  } catch {
    return {
      sentence: words.notQuestions,
      way: 'again',
    };
  }
}
