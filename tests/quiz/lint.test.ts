import { describe, expect, test } from 'vitest';
import {
  keyLongest,
  keyPositions,
  lintBank,
  lintItem,
  type LintRules,
} from '../../src/quiz/lint.ts';
import type { Question } from '../../src/quiz/schema.ts';
import { all, match, number, order, several, single } from './sample.ts';

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

describe('at its edges', () => {
  const of = (length: number, sign = 'x'): string => `Thing ${sign}`.padEnd(length, sign);
  test('options may be as unlike as 1.6 times the shortest and 15 more', () => {
    // The shortest has 10: up to 31.
    const found = (longest: number) =>
      faults(
        withOptions([of(10, 'a'), true], [of(longest, 'b'), false], [of(12, 'c'), false]),
      ).join();
    expect(found(31)).not.toContain('unlike length');
    expect(found(32)).toContain('the options are of unlike length (10 to 32 characters).');
  });
  test('what a message says in quotes is not the author asking in the negative', () => {
    for (const stem of [
      'What does “not engaged” mean?',
      'The tool says "cannot read". What do you do?',
    ])
      expect(faults({ ...single, stem })).toEqual([]);
    for (const stem of ['The tool says "ready". Which is not read?', 'Which is not "ready" yet?'])
      expect(faults({ ...single, stem })).toHaveLength(1);
  });
  test('two options that share an id', () => {
    const twice = single.options.map((one) => ({ ...one, id: 'one' }));
    expect(faults({ ...single, options: twice })).toContain('q-single: two options share an id.');
  });
  test('several needs two that are right and one that is not', () => {
    const found = (...right: readonly boolean[]) =>
      faults({
        ...several,
        options: right.map((correct, i) => ({
          ...{ id: `o${i}`, text: `Thing number ${i}`, correct },
          why: `Reason number ${i} of its own.`,
        })),
      } as Question).join();
    expect(found(true, true, false)).toBe('');
    expect(found(true, false, false)).toContain(
      'q-several: "several" needs at least two correct options and one wrong one, but 1 of 3 are correct.',
    );
    expect(found(true, true, true)).toContain('but 3 of 3 are correct.');
  });
  test('amounts alike are not in order', () => {
    const found = (...sizes: readonly number[]) =>
      faults(
        withOptions(...sizes.map((size, i): [string, boolean] => [`{pressure ${size}}`, i === 0])),
      ).join();
    expect(found(300, 400, 500)).toBe('');
    for (const sizes of [
      [300, 300, 500],
      [300, 500, 400],
      [500, 400, 300],
    ])
      expect(found(...sizes)).toContain('options that are amounts stand in order, smallest first.');
  });
  test('a bank is told where its keys stand once two more than even are at one place', () => {
    const found = (places: readonly number[]) =>
      faults(...copies(places.length, (i) => places[i] ?? 0, false)).filter((one) =>
        one.includes('positions'),
      );
    // Of nine, three each is even; five at one place are two more, six are three.
    expect(found([0, 0, 0, 1, 1, 1, 2, 2, 2])).toEqual([]);
    expect(found([0, 0, 0, 0, 0, 1, 1, 2, 2])).toEqual([]);
    expect(found([0, 0, 0, 0, 0, 0, 1, 1, 2])).toEqual([
      'bank: in items with 3 options the key stands at positions 6, 2, 1; spread it evenly.',
    ]);
    expect(
      keyPositions(
        copies(9, () => 1, false),
        3,
      ),
    ).toEqual([0, 9, 0]);
    expect(
      keyPositions(
        copies(9, () => 1, false),
        4,
      ),
    ).toEqual([0, 0, 0, 0]);
  });
  test('a key that is longest in a tenth more than chance is allowed', () => {
    const mixed = (long: number) => [
      ...copies(10, (i) => i % 3, true).slice(0, long),
      ...copies(10, (i) => i % 3, false)
        .slice(long)
        .map((one) => ({ ...one, id: `${one.id}-b` })),
    ];
    // Of ten, a third and a tenth are 4.33.
    const found = (long: number) => faults(...mixed(long)).filter((one) => one.includes('longest'));
    expect(keyLongest(mixed(4)).share).toBe(0.4);
    expect(keyLongest(mixed(4)).chance).toBeCloseTo(1 / 3, 12);
    expect(found(4)).toEqual([]);
    expect(found(5)).toEqual([
      'bank: the right option is the longest in 50 % of items; chance is 33 % and 10 % more is allowed.',
    ]);
    expect(keyLongest([])).toEqual({ share: 0, chance: 0 });
  });
  test('coverage counts each objective and each lesson by itself', () => {
    const many = [...Array(6).keys()].map((i) => ({ ...single, id: `q-${i}`, unseen: i < 2 }));
    const two = [...objectives, { id: 'b-1', lesson: 'lesson-b' }];
    const lines = lintBank([...many, number], two);
    expect(lines.filter((one) => /^(a-1|lesson-a):/u.test(one))).toEqual([]);
    expect(lines.filter((one) => /^(b-1|lesson-b):/u.test(one))).toEqual([
      'b-1: has 0 items and needs 3.',
      'b-1: is asked in 0 format(s) and needs 2.',
      'lesson-b: has 0 questions and needs 6.',
      'lesson-b: has 0 questions in an unseen setting and needs 2.',
    ]);
  });
  test('steps and pairs with one explanation between two of them', () => {
    const [first, ...rest] = order.steps;
    const alike = { ...order, steps: [{ ...first, why: rest[0]?.why }, ...rest] } as Question;
    expect(faults(alike)).toContain('q-order: two lines share one explanation.');
    const [pair, ...pairs] = match.pairs;
    const same = { ...match, pairs: [{ ...pair, why: pairs[0]?.why }, ...pairs] } as Question;
    expect(faults(same)).toContain('q-match: two lines share one explanation.');
    expect(faults(order, match)).toEqual([]);
  });
});
