import { expect, test } from 'vitest';
import { grade } from '../../src/quiz/grade.ts';
import { resultOf } from '../../src/quiz/result.ts';
import { ask, number, several, single } from './sample.ts';

function result(question: Parameters<typeof ask>[0], given: Parameters<typeof grade>[1]) {
  const graded = grade(ask(question), given, 1);
  if (!graded.ok) throw new Error(graded.sentence);
  return resultOf(graded.outcome);
}

// "one" and "two" fit, "three" does not.
test.each([
  [['one', 'two'], 'right'],
  [['one'], 'partial'],
  [['one', 'two', 'three'], 'partial'],
  [['one', 'three'], 'wrong'],
  [['three'], 'wrong'],
])('ticking %j is %s', (ids, expected) => {
  expect(result(several, { kind: 'chosen', ids })).toBe(expected);
});

test('one best answer and a number are right or wrong', () => {
  expect(result(single, { kind: 'chosen', ids: ['one'] })).toBe('right');
  expect(result(single, { kind: 'chosen', ids: ['two'] })).toBe('wrong');
  const typed = (text: string) => ({ kind: 'typed', text, system: 'si' }) as const;
  expect(result(number, typed('400'))).toBe('right');
  expect(result(number, typed('300'))).toBe('wrong');
});
