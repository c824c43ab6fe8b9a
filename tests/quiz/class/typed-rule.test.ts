import { expect, test } from 'vitest';
import type { AskedNumber } from '../../../src/quiz/asked.ts';
import { typedRule } from '../../../src/quiz/class/typed-rule.ts';

const wrong = (rule: string, value: number) => ({
  ...{ rule, value, mistake: rule, why: [] },
  valueWords: [`${value} kPa`],
});
const asked = {
  ...{ id: 'q', kind: 'number', quantity: 'pressure', stem: [], objectives: [], concept: 'c' },
  ...{ value: 400, within: 10, valueWords: ['400 kPa'], why: [] },
  distractors: [wrong('forgot-the-spring', 450), wrong('took-the-line', 455)],
} as unknown as AskedNumber;
const typed = (text: string, system: 'si' | 'us' = 'si') =>
  typedRule(asked, { kind: 'typed', text, system });

test('a typed number counts for the named wrong rule it came from, the nearest of two', () => {
  expect(typed('449')).toEqual(['forgot-the-spring']);
  expect(typed('456')).toEqual(['took-the-line']);
  // 1 psi is 6.894757 kPa (NIST SP 811), so 65.3 psi is 450.2 kPa.
  expect(typed('65.3', 'us')).toEqual(['forgot-the-spring']);
});

test('the answer, a number of nobody, words and a chosen option count for no rule', () => {
  for (const text of ['400', '300', 'about right', '']) expect(typed(text)).toEqual([]);
  expect(typedRule(asked, { kind: 'chosen', ids: ['a'] })).toEqual([]);
  expect(typedRule(undefined, { kind: 'typed', text: '450', system: 'si' })).toEqual([]);
});
