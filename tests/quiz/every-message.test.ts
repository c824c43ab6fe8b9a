/** Whatever is wrong with a question, its author is told in a sentence that says where: no field is left to the library's words. */
import { expect, test } from 'vitest';
import { parseQuestions, type Question } from '../../src/quiz/schema.ts';
import { all, forms } from './sample.ts';

const WRONG: readonly unknown[] = [
  undefined,
  null,
  true,
  -1,
  7,
  '',
  'x',
  'Not a Slug',
  [],
  {},
  { odd: 1 },
];
/** Everything that a question may have beside what the samples do. */
const full = {
  lookAlikes: ['gap'],
  chart: 'hot-and-cold',
  varies: 'family',
  tryIt: '/lessons/a/?sim=1~temp.90#sim',
};

const fullOf = (question: Question): object => {
  switch (question.kind) {
    case 'single':
      return { form: 'deciding-reading', healthy: true };
    case 'case':
      return { arrives: 'hot' };
    case 'number':
      return { number: { ...question.number, tolerance: { relative: 0.05, absolute: 10 } } };
    default:
      return {};
  }
};

/** The thing itself with something else at one of its places, for each place and each wrong thing. */
function* spoiled(thing: unknown): Generator {
  yield* WRONG;
  if (Array.isArray(thing)) {
    for (const [at, one] of thing.entries())
      for (const other of spoiled(one)) yield thing.toSpliced(at, 1, other);
  } else if (typeof thing === 'object' && thing !== null) {
    for (const [key, one] of Object.entries(thing))
      for (const other of spoiled(one)) yield { ...thing, [key]: other };
  }
}

const told = (question: unknown): readonly string[] => {
  try {
    parseQuestions([question], 'x.json');
    return [];
  } catch (error) {
    return (error as Error).message.split('\n');
  }
};

test.each(
  [...all, ...forms].map((question) => [
    question.id,
    { ...question, ...full, ...fullOf(question) },
  ]),
)('%s with anything wrong in it', (_, question) => {
  const odd: string[] = [];
  let refused = 0;
  for (const other of spoiled(question)) {
    const lines = told(other);
    refused += Number(lines.length > 0);
    for (const line of lines) {
      const [, message = ''] =
        /^x\.json, question (?:"[^"]*"|number 1)(?: at [\w.-]+)?: (.*)$/u.exec(line) ?? [];
      // It begins as a sentence does, or with what was written, says what it is about, and ends.
      const isSentence = /^(?:[A-Z]|"[^"]*" (?:is|may|names|holds|must))[^\n]{10,}\.$/u.test(
        message,
      );
      if (!isSentence || /invalid|expected|unrecognized|undefined is/iu.test(message))
        odd.push(line);
    }
  }
  expect([...new Set(odd)]).toEqual([]);
  expect(refused).toBeGreaterThan(100);
});
