import { afterEach, expect, test, vi } from 'vitest';
import { readQuestionSet, writeQuestionSet } from '../../src/quiz/question-set.ts';
import { questionsAddress } from '../../src/widgets/retrieval/address.ts';
import { fetchQuestions } from '../../src/widgets/retrieval/fetch-questions.ts';
import { offerWords } from '../../src/widgets/retrieval/offer-words.ts';
import * as player from '../../src/widgets/retrieval/player.ts';
import { asked } from '../quiz/sample.ts';

const good = writeQuestionSet({ form: 1, lesson: 'a', questions: asked, objectives: [] });
const words = offerWords(4, 4);
const load = vi.fn(() => Promise.resolve(player));
const ask = () => fetchQuestions('/questions/a.json', 'a', words, load);
const answers = (answer: () => Promise<Response>) => vi.stubGlobal('fetch', vi.fn(answer));

afterEach(() => {
  vi.unstubAllGlobals();
  load.mockClear();
});

test.each([
  ['/', '/questions/a.json'],
  ['/es/', '/es/questions/a.json'],
  ['/es', '/es/questions/a.json'],
])('under %s the questions are at %s', (base, address) => {
  expect(questionsAddress(base, 'a')).toBe(address);
});

test('questions that arrive are handed on with what asks them', async () => {
  answers(() => Promise.resolve(new Response(good)));
  const opened = await ask();
  expect('set' in opened && opened.set).toEqual(readQuestionSet(good, 'a'));
});

test('without a connection it can be tried again, and no script was asked for', async () => {
  answers(() => Promise.reject(new TypeError('Failed to fetch')));
  expect(await ask()).toEqual({ way: 'again', sentence: words.offline });
  // A browser that remembers scripts that failed has nothing to remember.
  expect(load).not.toHaveBeenCalled();
  answers(() => Promise.resolve(new Response(good)));
  expect(await ask()).toHaveProperty('set');
});

test('a connection lost half-way is no different', async () => {
  const body = new ReadableStream({
    start: (controller) => {
      controller.enqueue(new TextEncoder().encode(good.slice(0, 100)));
      controller.error(new TypeError('network error'));
    },
  });
  answers(() => Promise.resolve(new Response(body)));
  expect(await ask()).toMatchObject({ way: 'again' });
});

test('a script that does not load asks for a reload', async () => {
  answers(() => Promise.resolve(new Response(good)));
  load.mockRejectedValueOnce(new TypeError('Failed to fetch dynamically imported module'));
  expect(await ask()).toEqual({ way: 'reload', sentence: words.stuck });
});

test.each([404, 500])('an answer of %i is named', async (status) => {
  answers(() => Promise.resolve(new Response('Not here', { status })));
  const opened = await ask();
  expect(opened).toMatchObject({ way: 'reload' });
  expect('sentence' in opened && opened.sentence).toContain(String(status));
});

test.each(['<!doctype html><title>Log in</title>', good.replace('"a"', '"b"'), good.slice(0, 90)])(
  'something else than the questions is refused in a sentence, and can be tried again',
  async (text) => {
    answers(() => Promise.resolve(new Response(text)));
    const opened = await ask();
    expect(opened).toMatchObject({ way: 'again' });
    expect('sentence' in opened && opened.sentence).toContain('reload the page');
  },
);
