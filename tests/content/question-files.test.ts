/** The built question files, as a page fetches them. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { builtPages, dist } from '../../src/build/pages.ts';
import { questionBank, retrievalSet } from '../../src/lessons/question-bank.ts';
import { passageText, type Asked, type Passage } from '../../src/quiz/asked.ts';
import { readQuestionSet } from '../../src/quiz/question-set.ts';

const lessons = [...new Set(questionBank().map(({ lesson }) => lesson))];
/** As a reader of each unit system sees them: every passage as its text. */
const asRead = (questions: readonly Asked[]): unknown =>
  JSON.parse(
    JSON.stringify(questions, (_, value: unknown) =>
      Array.isArray(value) && !value.some((piece) => typeof piece === 'object' && 'id' in piece)
        ? (['si', 'us'] as const).map((system) => passageText(value as Passage, system))
        : value,
    ),
  );
/** Twenty questions of which a third come in six variants; 50 ms of a slow phone’s line. */
const MOST_KB = 10;

test('there are lessons with questions', () => expect(lessons.length).toBeGreaterThan(0));

describe.each(lessons)('%s', (lesson) => {
  const text = readFileSync(join(dist, 'questions', `${lesson}.json`), 'utf8');

  test('holds the bank’s questions, strictly read', () => {
    const { questions } = retrievalSet(lesson);
    expect(asRead(readQuestionSet(text, lesson).questions)).toEqual(asRead(questions));
    expect(text).not.toContain('"amount"');
  });
  test(`weighs at most ${MOST_KB} kB compressed`, () => {
    expect(gzipSync(text, { level: 9 }).length / 1000).toBeLessThan(MOST_KB);
  });
  test('is not in the page a second time, but for the list without a script', () => {
    const page = builtPages().find(({ address }) => address === `/lessons/${lesson}/`);
    const island = page?.html.match(/<astro-island[^>]*Offer[^>]*>/)?.[0] ?? '';
    expect(island).toContain(`/questions/${lesson}.json`);
    expect(island).not.toContain('correct');
    expect(page?.html).toContain('class="retrieval-plain"');
  });
});
