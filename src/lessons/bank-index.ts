import type { BankIndex } from '../quiz/bank-index.ts';
import type { Area } from '../quiz/rehearsal/blueprint.ts';
import type { Question } from '../quiz/schema.ts';
import { course } from './course.ts';
import { questionBank } from './question-bank.ts';
import { areaOf, asksWhatNext } from './rehearsal-areas.ts';

const areaOfObjective: ReadonlyMap<string, Area> = new Map(Object.entries(areaOf));
const asksNext: ReadonlySet<string> = new Set(asksWhatNext);

/** What a rehearsal needs to know of a question; its first objective decides. What it is not is left out. */
function forRehearsal(question: Question) {
  const [first = ''] = question.objectives;
  const area = areaOfObjective.get(first);
  if (area === undefined)
    throw new Error(`Question "${question.id}": the objective "${first}" has no area.`);
  return {
    area,
    ...(question.unseen && question.level !== 'recall' && { unseen: true }),
    ...(asksNext.has(first) && { next: true }),
    ...(question.healthy && { healthy: true }),
  };
}

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
        .map((question) => {
          const { id, concept, lookAlikes = [] } = question;
          return { id, concept, lookAlikes, lesson, ...forRehearsal(question) };
        }),
    ),
  };
}
