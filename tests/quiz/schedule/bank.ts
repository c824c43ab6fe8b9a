/** The questions of the site as practice sees them: in the order of the course, without their words. */
import { readFileSync, existsSync } from 'node:fs';
import { course } from '../../../src/lessons/course.ts';
import { parseQuestions } from '../../../src/quiz/schema.ts';

export const bank = course.flatMap(({ id }) => {
  const path = `content/en/questions/${id}.json`;
  if (!existsSync(path)) return [];
  return parseQuestions(JSON.parse(readFileSync(path, 'utf8')), path).map((question) => ({
    id: question.id,
    concept: question.concept,
    lookAlikes: question.lookAlikes ?? [],
  }));
});
if (bank.length < 100)
  throw new Error(`The bank has ${bank.length} questions: is the folder gone?`);
