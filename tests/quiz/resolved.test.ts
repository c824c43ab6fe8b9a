/** Each kind of question whole, as it is asked; worked out by hand from sample.ts. */
import { describe, expect, test } from 'vitest';
import type { Asked } from '../../src/quiz/asked.ts';
import type { QuantityName } from '../../src/quantity/by-name.ts';
import { longestRising } from '../../src/quiz/longest-rising.ts';
import { numberMet } from '../../src/quiz/number-met.ts';
import { resolveQuestion, startingAmount } from '../../src/quiz/resolve.ts';
import { readPassage } from '../../src/quiz/read-passage.ts';
import { plain } from './plain.ts';
import {
  amounts,
  ask,
  gap,
  lookup,
  match,
  number,
  order,
  several,
  shortCase,
  single,
  spot,
} from './sample.ts';

const common = (id: string, concept = 'gap') => ({
  ...{ id, objectives: ['a-1'], concept, lookAlikes: [], level: 'recall', unseen: false },
  ...{ source: 'engine', stem: ['A gauge reads ', '600 kPa', '. What does it show?'] },
});
const why = (id: string, what = 'option') => [`Because ${what} ${id} is what it is.`];
const options = (...right: readonly boolean[]) =>
  [
    ['one', 'The first thing'],
    ['two', 'A second thing'],
    ['three', 'Some third thing'],
  ].map(([id = '', text], i) => ({ id, words: [text], correct: right[i] ?? false, why: why(id) }));

test.each<[string, Asked, object]>([
  [
    'single',
    ask(single),
    { ...common('q-single'), kind: 'single', ordered: false, options: options(true) },
  ],
  [
    'several',
    ask(several),
    {
      ...common('q-several', 'hole'),
      kind: 'several',
      ordered: false,
      options: options(true, true),
    },
  ],
  [
    'amounts',
    ask(amounts),
    {
      ...common('q-amounts', 'size'),
      ...{ kind: 'single', ordered: true },
      options: [
        { id: 'low', words: ['300 kPa'], correct: false, why: why('low') },
        { id: 'mid', words: ['400 kPa'], correct: true, why: why('mid') },
        { id: 'high', words: ['500 kPa'], correct: false, why: why('high') },
      ],
    },
  ],
  [
    'order',
    ask(order),
    {
      ...common('q-order'),
      kind: 'order',
      // The two that may swap have the place of the first of them.
      steps: [
        { id: 'chock', words: ['Chock the wheels'], why: why('chock', 'step'), rank: 0 },
        {
          id: 'level',
          words: ['Look at the level at ', '40 °C'],
          why: why('level', 'step'),
          rank: 1,
        },
        { id: 'codes', words: ['Read the codes'], why: why('codes', 'step'), rank: 1 },
        { id: 'drive', words: ['Drive it hot'], why: why('drive', 'step'), rank: 3 },
      ],
    },
  ],
  [
    'match',
    ask(match),
    {
      ...common('q-match'),
      kind: 'match',
      pairs: [
        { id: 'both', words: ['Drive and Reverse'], why: ['Both are fed through it.'] },
        { id: 'one', words: ['Reverse alone'], why: ['Only Reverse has it.'] },
        { id: 'all', words: ['Every range'], why: ['It feeds all of them.'] },
      ],
      partners: [
        { id: 'both', words: ['Shared seal'] },
        { id: 'one', words: ['Reverse piston'] },
        { id: 'all', words: ['Pump'] },
        { id: 'extra', words: ['Park pawl'] },
      ],
      extraWhy: ['It holds the car and slips nowhere.'],
    },
  ],
  [
    'spot',
    ask(spot),
    {
      ...common('q-spot'),
      ...{ kind: 'spot', answers: ['under'] },
      steps: [
        { id: 'lift', words: ['Lift the car'], why: why('lift', 'step') },
        { id: 'under', words: ['Go under it'], why: why('under', 'step') },
        { id: 'engine', words: ['Start the engine'], why: why('engine', 'step') },
      ],
    },
  ],
  [
    'gap',
    ask(gap),
    {
      ...common('q-gap'),
      ...{ kind: 'spot', answers: ['lift'] },
      steps: [
        { id: 'lift', words: ['Lift the car'], why: why('lift', 'step') },
        { id: 'under', words: ['Go under it'], why: why('under', 'step') },
        { id: 'engine', words: ['Start the engine'], why: why('engine', 'step') },
      ],
      missing: { words: ['Set the stands'], why: ['A jack is no stand at all.'] },
    },
  ],
])('%s', (_kind, asked, whole) => {
  expect(plain(asked)).toEqual(whole);
});

test('a case: arrives cold unless it says, and each reading has the author’s reason', () => {
  const asked = ask(shortCase);
  if (asked.kind !== 'case') throw new Error(asked.kind);
  expect(asked.arrives).toBe('cold');
  expect(asked.cheapest).toEqual(['log']);
  expect(asked.readings.map(({ id, why: reason }) => [id, reason])).toEqual([
    ['log', ['Because log told it.']],
    ['tap', ['Because tap told it.']],
    ['line', ['Because line told it.']],
  ]);
  expect(plain(asked.options)).toEqual([
    { id: 'seal', words: ['The shared seal'], correct: true, why: why('seal') },
    { id: 'rings', words: ['The forward rings'], correct: false, why: why('rings') },
    { id: 'none', words: ['Nothing at all'], correct: false, why: why('none') },
  ]);
  const hot = ask({ ...shortCase, arrives: 'hot' });
  expect(hot.kind === 'case' && hot.arrives).toBe('hot');
});

describe('a number', () => {
  const within = (tolerance: object): number => {
    const asked = ask({ ...number, number: { ...number.number, tolerance } });
    if (asked.kind !== 'number') throw new Error(asked.kind);
    return asked.within;
  };
  test('the wider of share and amount counts', () => {
    expect(within({ relative: 0.05 })).toBeCloseTo(20, 12);
    expect(within({ absolute: 7 })).toBe(7);
    expect(within({ relative: 0.05, absolute: 7 })).toBeCloseTo(20, 12);
    expect(within({ relative: 0.05, absolute: 30 })).toBe(30);
  });
  test('meets the answer, or the nearest of the wrong rules within reach, or neither', () => {
    const asked = ask(number);
    if (asked.kind !== 'number') throw new Error(asked.kind);
    const met = (text: string, system: 'si' | 'us' = 'si') =>
      numberMet(asked, { kind: 'typed', text, system });
    expect(met('420')).toMatchObject({ right: true, rule: undefined });
    expect(met('420.1')).toMatchObject({ right: false, rule: undefined });
    expect(met('380')).toMatchObject({ right: true });
    expect(met('319')).toMatchObject({ right: false, rule: { rule: 'forgot-spring' } });
    expect(met('321')).toMatchObject({ right: false, rule: undefined });
    expect(met('1600')).toMatchObject({ right: false, rule: { rule: 'took-diameter' } });
    // 420 kPa in psi, exactly at the limit.
    expect(met(String(420 / 6.894757293168361), 'us')).toMatchObject({ right: true });
    expect(met('lots')).toMatchObject({ ok: false });
  });
  test('what cannot be read is shown how one is written: in its unit, in its usual size, and not as the answer', () => {
    const said = (quantity: QuantityName, value: number, system: 'si' | 'us') => {
      const asked = ask(number);
      if (asked.kind !== 'number') throw new Error(asked.kind);
      const met = numberMet(
        { ...asked, quantity, value, within: value / 20, distractors: [] },
        { kind: 'typed', text: 'lots', system },
      );
      return met.ok ? '' : met.sentence.replaceAll('\u00a0', ' ');
    };
    expect(said('seconds', 2, 'us')).toMatch(/ with s, such as 0\.80 s\.$/);
    expect(said('pressure', 900, 'us')).toMatch(/ with psi or kPa, such as 58 psi\.$/);
    expect(said('pressure', 900, 'si')).toMatch(/ with kPa or psi, such as 400 kPa\.$/);
    expect(said('times', 9, 'us')).toMatch(/Write a number, such as 3\.0\.$/);
    // Where the usual size is the answer, twice of it.
    expect(said('pressure', 410, 'si')).toMatch(/such as 800 kPa\.$/);
  });
  test('asked as a choice it keeps all that it had', () => {
    const choice = ask({
      ...number,
      number: { ...number.number, entry: 'choose' },
      tryIt: '/lessons/a/?sim=1#sim',
    });
    expect(plain(choice)).toEqual({
      ...common('q-number', 'area'),
      ...{ level: 'apply', unseen: true, tryIt: '/lessons/a/?sim=1#sim' },
      stem: ['What pressure does the press need to lift this load?'],
      ...{ kind: 'single', ordered: true },
      options: [
        {
          ...{ id: 'forgot-spring', words: ['300 kPa'], correct: false },
          why: [
            'You get this if you forget the spring. ',
            'The spring takes its share before the load moves.',
          ],
        },
        {
          ...{ id: 'right', words: ['400 kPa'], correct: true },
          why: ['Force over area, with the spring taken off first.'],
        },
        {
          ...{ id: 'took-diameter', words: ['1600 kPa'], correct: false },
          why: [
            'You get this if you take the diameter for the radius. ',
            'Area goes with the square, so this is four times off.',
          ],
        },
      ],
    });
  });
  test('what the engine has not is refused by name', () => {
    const bad = (part: object) => () => ask({ ...number, number: { ...number.number, ...part } });
    expect(bad({ distractors: [{ rule: 'nowhere', why: 'x' }] })).toThrow(
      'Question "q-number": "press-needed" has no wrong rule "nowhere". It has: forgot-spring, took-diameter.',
    );
    expect(bad({ quantity: 'flow' })).toThrow(
      'Question "q-number": asks for a flow, but the engine number "press-needed" is a pressure.',
    );
    expect(() =>
      resolveQuestion(
        {
          ...number,
          number: { ...number.number, key: 'bare', distractors: [{ rule: 'x', why: 'y' }] },
        },
        () => ({
          ...{ quantity: 'pressure', value: 1, wrong: {} },
        }),
      ),
    ).toThrow('"bare" has no wrong rule "x". It has: none.');
    expect(() => resolveQuestion(shortCase, lookup)).toThrow(
      'Question "q-case": it has a case, and there is nothing here to make one.',
    );
  });
});

describe('numbers in text', () => {
  const read = (text: string) => plain(readPassage(text, lookup));
  test('stand between what stands as it is, and nothing empty stands beside them', () => {
    expect(read('{pressure 600}')).toEqual(['600 kPa']);
    expect(read('{pressure 600}{pressure 400}')).toEqual(['600 kPa', '400 kPa']);
    expect(read('From { pressure  600 } to {= press-needed}.')).toEqual([
      'From ',
      '600 kPa',
      ' to ',
      '400 kPa',
      '.',
    ]);
    expect(read('Nothing here')).toEqual(['Nothing here']);
    expect(read('')).toEqual([]);
    expect(read('{temperature -10}')).toEqual(['−10 °C']);
  });
  test.each(['{pressure}', '{pressure x}', '{600}', '{presure 600}', '{}'])(
    '%s is none',
    (text) => {
      expect(() => read(text)).toThrow(`"${text}" is no number in question text.`);
    },
  );
  test('an option that starts with an amount, and how much it is', () => {
    expect(
      [
        '{pressure 300}',
        'About 70',
        'at {temperature 20.5}',
        'under -3',
        '  over 4 rpm',
        'hot',
        'some 4',
        '',
      ].map(startingAmount),
    ).toEqual([300, 70, 20.5, -3, 4, undefined, undefined, undefined]);
  });
});

// By hand: what has to be moved least stands right.
test.each([
  [[], []],
  [[5], [0]],
  [
    [0, 1, 2],
    [0, 1, 2],
  ],
  [[2, 1, 0], [0]],
  [
    [3, 0, 1, 2],
    [1, 2, 3],
  ],
  [
    [0, 3, 1, 2],
    [0, 2, 3],
  ],
  [
    [1, 1, 0],
    [0, 1],
  ],
  [
    [1, 2, 0, 1],
    [0, 1],
  ],
  [
    [2, 0, 3, 1],
    [0, 2],
  ],
])('of %j the longest that is in order is %j', (values, places) => {
  expect(longestRising(values)).toEqual(places);
});
