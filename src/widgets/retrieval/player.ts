/** What comes once the reader has pressed start: reads what arrived, and asks the questions. */
import { readQuestionSet, type QuestionSet } from '../../quiz/question-set.ts';
import { leftRound, type LeftRound } from './left-round.ts';
import { words } from './player/words.en.ts';
import { Retrieval } from './View.tsx';

export type Opened =
  | {
      readonly set: QuestionSet;
      /** The round of this lesson that waits, if one does. */
      readonly left: LeftRound | undefined;
      readonly Player: typeof Retrieval;
    }
  | {
      /** What came instead, and what the reader can do about it. */
      readonly sentence: string;
      readonly way: 'again' | 'reload';
    };

export async function open(text: string, status: number, lesson: string): Promise<Opened> {
  if (status !== 200) {
    return {
      sentence: words.otherAnswer(String(status)),
      way: 'reload',
    };
  }
  let set: QuestionSet;
  try {
    set = readQuestionSet(text, lesson);
  } catch {
    return {
      sentence: words.notQuestions,
      way: 'again',
    };
  }
  return { set, left: await leftRound(lesson), Player: Retrieval };
}
