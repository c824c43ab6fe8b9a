import type { BankIndex } from '../quiz/bank-index.ts';
import { course } from './course.ts';
import { questionBank } from './question-bank.ts';

/** The questions in the order of the course. */
export function bankIndex(): BankIndex {
  const bank = questionBank();
  const lessons = course.filter(({ id }) => bank.some(({ lesson }) => lesson === id));
  return {
    form: 1,
    lessons: lessons.map(({ id, title }) => ({ id, title })),
    items: lessons.flatMap(({ id: lesson }) =>
      bank
        .filter((question) => question.lesson === lesson)
        .map(({ id, concept, lookAlikes = [], healthy }) => ({
          ...{ id, concept, lookAlikes, lesson },
          ...(healthy && { healthy }),
        })),
    ),
  };
}
