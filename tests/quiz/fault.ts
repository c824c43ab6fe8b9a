import { parseQuestions } from '../../src/quiz/schema.ts';

/** What an author is told of a file of questions; "accepted" where that is nothing. */
export function faultOf(raw: unknown): string {
  try {
    parseQuestions(raw, 'x.json');
  } catch (error) {
    return (error as Error).message;
  }
  return 'accepted';
}
