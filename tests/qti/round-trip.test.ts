/** What goes out as a package comes back as the same questions. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { qtiBank } from '../../src/lessons/qti-bank.ts';
import { questionFile } from '../../src/lessons/question-bank.ts';
import type { QtiBank, QtiLesson } from '../../src/qti/bank.ts';
import type { Passage } from '../../src/quiz/asked.ts';
import { settled } from '../../src/qti/passage.ts';
import { readQti } from '../../src/qti/read.ts';
import { writeQti } from '../../src/qti/write.ts';
import { bank } from './banks.ts';

test('any questions come back as they went out, in either unit system', () => {
  fc.assert(
    fc.property(bank, (given) => {
      expect(readQti(writeQti(given))).toEqual(given);
    }),
    { numRuns: 40 },
  );
});

const PASSAGES = new Set(['stem', 'words', 'why', 'valueWords', 'extraWhy', 'about', 'reads']);
/** The questions as the page of a lesson fetches them, each in its first variant, with text in as few pieces as it takes. */
function asFetched(lesson: string): unknown {
  const { questions } = JSON.parse(questionFile(lesson)) as { questions: unknown };
  return JSON.parse(JSON.stringify(questions), (key, value: unknown) =>
    PASSAGES.has(key)
      ? settled(value as Passage)
      : key === 'rows'
        ? (value as Passage[][]).map((row) => row.map(settled))
        : value,
  );
}

test('each lesson keeps the order of its own objectives, though another has the same in another order', () => {
  const [first] = fc.sample(bank, { numRuns: 1, seed: 1 });
  const question = first?.lessons[0]?.questions[0];
  if (question === undefined) throw new Error('No bank was drawn.');
  const named = (id: string, objectives: readonly string[]): QtiLesson => ({
    ...{ id, title: 'Flow' },
    objectives: objectives.map((one) => ({ id: one, text: `Say ${one}.` })),
    questions: objectives.map((one, place) => ({
      ...question,
      id: `${id}-${place}`,
      objectives: [one],
    })),
  });
  const lessons = [named('flow', ['gap', 'leak']), named('seal', ['leak', 'gap'])];
  const given = { ...first, lessons } as QtiBank;
  expect(readQti(writeQti(given))).toEqual(given);
});

test('all questions of the site come back, lesson by lesson', () => {
  const given = qtiBank('us');
  const bytes = writeQti(given);
  const back = readQti(bytes).lessons;
  expect(back.map(({ id, title }) => [id, title])).toEqual(
    given.lessons.map(({ id, title }) => [id, title]),
  );
  expect(
    given.lessons.some(({ questions }) => questions.some((one) => 'others' in one)),
    'some vary',
  ).toBe(true);
  for (const { id, questions } of back) expect(questions, id).toEqual(asFetched(id));
  expect(writeQti(given), 'the same questions give the same file').toEqual(bytes);
});
