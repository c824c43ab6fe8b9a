import { expect, test } from 'vitest';
import { keyLongest, lintBank, lintItem, type LintRules } from '../../src/quiz/lint.ts';
import type { Question } from '../../src/quiz/schema.ts';
import { all, number, several, single } from './sample.ts';

const lax: LintRules = {
  itemsPerObjective: 1,
  formatsPerObjective: 1,
  unseenPerLesson: 0,
  itemsPerLesson: 0,
};
const objectives = [{ id: 'a-1', lesson: 'lesson-a' }];
const faults = (...bank: Question[]) => lintBank(bank, objectives, lax);
const withOptions = (...options: [text: string, correct: boolean][]): Question => ({
  ...single,
  options: options.map(([text, correct], i) => ({
    id: `o${i}`,
    text,
    correct,
    why: `Reason number ${i} of its own.`,
  })),
});

test('the sample bank is clean', () => {
  expect(faults(...all)).toEqual([]);
});

test.each<[string, Question[], RegExp]>([
  [
    'no best answer',
    [withOptions(['One thing', false], ['Two things', false])],
    /0 are marked correct/,
  ],
  [
    'two best answers',
    [withOptions(['One thing', true], ['Two things', true])],
    /2 are marked correct/,
  ],
  [
    'all of several',
    [
      {
        ...several,
        options:
          several.kind === 'several' ? several.options.map((o) => ({ ...o, correct: true })) : [],
      } as Question,
    ],
    /3 of 3 are correct/,
  ],
  [
    'negative question',
    [{ ...single, stem: 'The clutch slips. Which part is not at fault?' }],
    /in the negative/,
  ],
  [
    'a state of a simulation for numbers that vary',
    [{ ...single, varies: 'family', tryIt: '/lessons/a/?sim=1~temp.90#sim' }],
    /its numbers vary/,
  ],
  ['shouted negative', [{ ...single, stem: 'Which is NOT a leak? Choose.' }], /in the negative/],
  [
    'catch-all',
    [withOptions(['One thing', true], ['All of the above', false])],
    /sums up the others/,
  ],
  [
    'unlike length',
    [
      withOptions(
        ['Oil', false],
        ['The oil is thinner hot and so it runs through the crack', true],
      ),
    ],
    /unlike length/,
  ],
  [
    'amounts out of order',
    [withOptions(['{pressure 500}', true], ['{pressure 400}', false])],
    /smallest first/,
  ],
  ['same text twice', [withOptions(['One thing', true], ['one thing', false])], /read the same/],
  ['id twice', [single, single], /share this id/],
  ['unknown objective', [{ ...single, objectives: ['b-9'] }], /"b-9" does not exist/],
  ['unknown look-alike', [{ ...single, lookAlikes: ['nothing'] }], /look-alike concept "nothing"/],
])('%s is found', (_name, bank, sentence) => {
  expect(faults(...bank).join('\n')).toMatch(sentence);
});

test('a complaint may say what does not happen', () => {
  expect(
    faults({ ...single, stem: 'The car does not move when hot. What is the first suspect?' }),
  ).toEqual([]);
});

test('an objective of another lesson is found', () => {
  const elsewhere = [...objectives, { id: 'b-1', lesson: 'lesson-b' }];
  expect(lintBank([single, { ...number, objectives: ['b-1'] }], elsewhere, lax).join('\n')).toMatch(
    /belongs to the lesson "lesson-b"/,
  );
  // The place in the file, so that the check can name its line.
  const [found] = lintItem({ ...single, objectives: ['a-1', 'b-1'] }, new Set(), elsewhere);
  expect(found?.path).toEqual(['objectives', 1]);
});

const copies = (n: number, at: (i: number) => number, long: boolean): Question[] =>
  Array.from({ length: n }, (_, i) => {
    const texts = ['A short one', 'Another one', 'A third one'].map(
      (text, j): [string, boolean] => [j === at(i) && long ? `${text} longer` : text, j === at(i)],
    );
    return { ...withOptions(...texts), id: `q-${i}` };
  });

test('a key that is the longest too often is found over the bank', () => {
  expect(keyLongest(copies(9, (i) => i % 3, true)).share).toBe(1);
  expect(faults(...copies(9, (i) => i % 3, true)).join('\n')).toMatch(
    /longest in 100 % of items; chance is 33 %/,
  );
});

test('a key that sits at one position is found, an even spread is not', () => {
  expect(faults(...copies(12, () => 1, false)).join('\n')).toMatch(/positions 0, 12, 0/);
  expect(faults(...copies(12, (i) => i % 3, false)).join('\n')).not.toMatch(/positions/);
});

test('coverage: items and formats per objective, unseen settings per lesson', () => {
  const text = lintBank([single, { ...single, id: 'q-2' }], objectives).join('\n');
  expect(text).toContain('a-1: has 2 items and needs 3.');
  expect(text).toContain('a-1: is asked in 1 format(s) and needs 2.');
  expect(text).toContain('lesson-a: has 0 questions in an unseen setting and needs 2.');
});

test.each([
  'Which of these is not worn?',
  'Which never leaks?',
  'Which would you do except hot?',
  'Which leaks least?',
  'Which is incorrect?',
  'Which is false?',
  'Which is untrue?',
  'Which cannot leak?',
  'Which doesn’t leak?',
  "Which doesn't leak?",
])('it asks in the negative: %s', (stem) => {
  expect(faults({ ...single, stem: `The car is warm. ${stem}` }).join()).toContain(
    'in the negative',
  );
});

test('a complaint may say what the car does not do, before the question or after it', () => {
  expect(faults({ ...single, stem: 'Hot, it does not move. What do you measure first?' })).toEqual(
    [],
  );
  expect(faults({ ...single, stem: 'What leaks? The car isn’t warm.' })).toEqual([]);
  // Two sentences without a question: the last is what is asked.
  expect(faults({ ...single, stem: 'It does not move. Name the part that leaks.' })).toEqual([]);
});
