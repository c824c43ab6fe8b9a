import { expect, test } from 'vitest';
import { grade, type Given, type Outcome } from '../../src/quiz/grade.ts';
import { passageText, type Asked } from '../../src/quiz/asked.ts';
import type { Certainty } from '../../src/quiz/certainty.ts';
import { ask, number, several, single } from './sample.ts';

const chosen = (...ids: string[]): Given => ({ kind: 'chosen', ids });
const typed = (text: string): Given => ({ kind: 'typed', text, system: 'si' });
const outcome = (q: Asked, given: Given, certainty: Certainty = 1): Outcome => {
  const graded = grade(q, given, certainty);
  if (!graded.ok) throw new Error(graded.sentence);
  return graded.outcome;
};

// Gardner-Medwin 2005: right 1/2/3, wrong 0/-2/-6.
test.each<[Certainty, number, number]>([
  [1, 1, 0],
  [2, 2, -2],
  [3, 3, -6],
])('certainty %i earns %i or costs %i', (certainty, right, wrong) => {
  expect(outcome(ask(single), chosen('one'), certainty).marks).toBe(right);
  expect(outcome(ask(single), chosen('two'), certainty).marks).toBe(wrong);
});

test('every option is explained, whatever was answered', () => {
  for (const [q, given] of [
    [ask(single), chosen('one')],
    [ask(single), chosen('three')],
    [ask(several), chosen('one')],
    [ask(number), typed('400')],
    [ask(number), typed('7')],
  ] as const) {
    const { explained } = outcome(q, given);
    expect(explained).toHaveLength(3);
    for (const e of explained) expect(passageText(e.why, 'si').length).toBeGreaterThan(10);
  }
});

test('several: all and only the right ones', () => {
  const q = ask(several);
  expect(outcome(q, chosen('one', 'two')).right).toBe(true);
  expect(outcome(q, chosen('one'))).toMatchObject({
    right: false,
    verdict: 'You found 1 of the 2 that fit.',
  });
  expect(outcome(q, chosen('one', 'two', 'three'))).toMatchObject({
    right: false,
    verdict: 'You found 2 of the 2 that fit, and ticked 1 that does not.',
  });
});

test('a number counts within its tolerance, in either unit', () => {
  const q = ask(number);
  for (const text of ['400', '381', '419,9 kPa', '58 psi', '4 bar'])
    expect(outcome(q, typed(text)).right, text).toBe(true);
  for (const text of ['379', '421', '50 psi'])
    expect(outcome(q, typed(text)).right, text).toBe(false);
});

test('a wrong number is traced to its mistake, or at least to its side', () => {
  const traced = outcome(ask(number), typed('1590'));
  expect(traced.verdict).toBe(
    'Not that. This is the number you get if you take the diameter for the radius.',
  );
  expect(traced.explained.find((e) => e.id === 'took-diameter')?.taken).toBe(true);
  expect(outcome(ask(number), typed('900')).verdict).toBe('Not that. It is too high.');
});

test('nothing chosen and unreadable numbers get a sentence, not a mark', () => {
  expect(grade(ask(single), chosen(), 1)).toEqual({
    ok: false,
    sentence: 'Choose one answer first.',
  });
  expect(grade(ask(several), chosen(), 1)).toEqual({
    ok: false,
    sentence: 'Tick at least one answer first.',
  });
  expect(grade(ask(number), typed('lots'), 3)).toMatchObject({ ok: false });
});

test('an answer of the wrong shape is a programming fault and throws', () => {
  expect(() => grade(ask(single), typed('4'), 1)).toThrow(/choosing/);
  expect(() => grade(ask(single), chosen('nine'), 1)).toThrow(/no option "nine"/);
  expect(() => grade(ask(number), chosen('one'), 1)).toThrow(/typing/);
});
