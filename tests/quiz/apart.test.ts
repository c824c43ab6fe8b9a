/** Of a variant that chance made: whether it can be told right from wrong. */
import { expect, test } from 'vitest';
import { isApart } from '../../src/quiz/apart.ts';
import type { AskedChoice, AskedNumber } from '../../src/quiz/asked.ts';
import { ask, forms, number, several, single } from './sample.ts';

const one = ask(single) as AskedChoice;
const more = ask(several) as AskedChoice;
const amount = ask(number) as AskedNumber;
const truths = (asked: AskedChoice, ...correct: readonly boolean[]): AskedChoice => ({
  ...asked,
  options: asked.options.map((option, place) => ({ ...option, correct: correct[place] ?? false })),
});
/** With the text of its second option like that of the first, in one unit system or in both. */
const reading = (second: AskedChoice['options'][number]['words']): AskedChoice => ({
  ...one,
  options: one.options.map((option, place) =>
    place > 1
      ? option
      : { ...option, words: place === 0 ? [{ si: '59 kPa', us: '9 psi' }] : second },
  ),
});

test.each([
  ['one, one right', truths(one, true), true],
  ['one, the last right', truths(one, false, false, true), true],
  ['one, none right', truths(one), false],
  ['one, two right', truths(one, true, true), false],
  ['several, two right', truths(more, true, true), true],
  ['several, one right', truths(more, true), false],
  ['several, all right', truths(more, true, true, true), false],
  [
    'options that read differently in both systems',
    reading([{ si: '64 kPa', us: '10 psi' }]),
    true,
  ],
  ['options that read alike in one system', reading([{ si: '62 kPa', us: '9 psi' }]), false],
  ['options that read alike', reading([{ si: '59 kPa', us: '9 psi' }]), false],
] as const)('%s: %s', (_, asked, apart) => {
  expect(isApart(asked)).toBe(apart);
});

test('what has no values and no options of its own is apart as it is written', () => {
  for (const asked of forms.map(ask)) expect(isApart(asked), asked.id).toBe(true);
});

/** The number with its mistakes moved [kPa]; 400 is right, and 20 either way counts. */
const mistakes = (first: number, second: number): AskedNumber => ({
  ...amount,
  distractors: amount.distractors.map((each, place) => {
    const value = place === 0 ? first : second;
    return {
      ...each,
      value,
      valueWords: [
        {
          amount: value,
          quantity: 'pressure',
          si: `${value} kPa`,
          us: `${(value / 6.894757).toFixed(value < 69 ? 1 : 0)} psi`,
        },
      ] as never,
    };
  }),
});

test.each([
  [300, 1600, true],
  // Within the tolerance, or so near that a value rounded in the hand is taken for it.
  [415, 1600, false],
  [421, 1600, false],
  [422, 1600, false],
  [430, 1600, true],
  [370, 1600, true],
  [378, 1600, false],
  // The mistakes apart from one another.
  [300, 301, false],
  [300, 312, false],
  [300, 330, true],
] as const)('mistakes of %d and %d kPa beside 400: %s', (first, second, apart) => {
  expect(isApart(mistakes(first, second))).toBe(apart);
});
