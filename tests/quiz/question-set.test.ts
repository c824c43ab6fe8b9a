import { expect, test } from 'vitest';
import { z } from 'zod';
import { passageText } from '../../src/quiz/asked.ts';
import {
  readQuestionSet,
  writeQuestionSet,
  type QuestionSet,
} from '../../src/quiz/question-set.ts';
import { ask, asked, forms } from './sample.ts';

const set: QuestionSet = {
  form: 1,
  lesson: 'lesson-a',
  questions: [...asked, ...forms.map(ask)],
  objectives: [{ id: 'a-1', text: 'Tell a gap from a hole.', section: 'a-section' }],
};
const print = (value: unknown): string => JSON.stringify(value);
const sent = writeQuestionSet(set);
/** The set with something else at a place in it. */
function spoilt(path: readonly (string | number)[], value: unknown): unknown {
  const copy: unknown = JSON.parse(sent);
  let at = copy as Record<string | number, unknown>;
  for (const step of path.slice(0, -1)) at = at[step] as typeof at;
  at[path.at(-1) ?? ''] = value;
  return copy;
}

test('a set comes back as it was sent', () => {
  expect(readQuestionSet(sent, 'lesson-a')).toEqual(JSON.parse(sent));
});

test('what travels reads as what was asked, and leaves the values before rounding at home', () => {
  const { questions } = readQuestionSet(sent, 'lesson-a');
  for (const system of ['si', 'us'] as const) {
    const stems = (list: QuestionSet['questions']) =>
      list.map(({ stem }) => passageText(stem, system));
    expect(stems(questions)).toEqual(stems(set.questions));
  }
  expect(print(set)).toContain('"amount"');
  expect(sent).not.toContain('"amount"');
});

test.each<[string, (string | number)[], unknown]>([
  ['a later form', ['form'], 2],
  ['another lesson', ['lesson'], 'lesson-b'],
  ['no questions', ['questions'], []],
  ['a key nobody knows', ['questions', 0, 'more'], 1],
  ['a kind nobody knows', ['questions', 0, 'kind'], 'essay'],
  ['no right option', ['questions', 0, 'options', 0, 'correct'], false],
  ['an option without a reason', ['questions', 0, 'options', 1, 'why'], []],
  ['a text in one unit system', ['questions', 0, 'stem'], [{ si: '4 kPa' }]],
  ['a number in words', ['questions', 3, 'value'], '400'],
  ['no tolerance', ['questions', 3, 'within'], 0],
  ['a quantity nobody knows', ['questions', 3, 'quantity'], 'luck'],
  ['steps without an order', ['questions', 4, 'steps', 1, 'rank'], 'first'],
  ['a pair without its partner', ['questions', 5, 'pairs', 0, 'id'], 'moon'],
  ['an unsafe step that is not there', ['questions', 6, 'answers'], ['moon']],
  ['a gap where none can be', ['questions', 6, 'answers'], ['start']],
  ['a gap after no step', ['questions', 7, 'answers'], ['moon']],
  ['an objective without words', ['objectives', 0, 'text'], ''],
])('%s is refused', (_, path, value) => {
  expect(() => readQuestionSet(print(spoilt(path, value)), 'lesson-a')).toThrow(/lesson-[ab]/u);
});

test.each(['', '<!doctype html><title>Log in</title>', 'null', '[]', sent.slice(0, -30)])(
  '%s is refused',
  (text) => {
    expect(() => readQuestionSet(text, 'lesson-a')).toThrow(/"lesson-a"/u);
  },
);

test('checks without making code of text, which the policy of the pages forbids', () => {
  readQuestionSet(sent, 'lesson-a');
  expect(z.config().jitless).toBe(true);
});
