import { describe, expect, test } from 'vitest';
import { passageText, type Varied } from '../../src/quiz/asked.ts';
import { pickVariant, variantNamed } from '../../src/quiz/pick-variant.ts';
import {
  readQuestionSet,
  writeQuestionSet,
  type QuestionSet,
} from '../../src/quiz/question-set.ts';
import { inSetting, type Variation } from '../../src/quiz/vary.ts';
import { ask, number, single } from './sample.ts';

const variation: Variation = {
  id: 'second,600',
  numbers: { press: 'family/second,600/press' },
  cases: { box: 'second' },
  truth: { one: false, two: true, three: false },
};
const varying = {
  ...single,
  varies: 'family',
  stem: 'The [[box: first = first | second = second]] gauge reads {= press} of {pressure 600}. What is it?',
  options: single.options.map((option) => ({
    ...option,
    why: `[[${option.id}: right = Yes. It is {= press}. | wrong = No. It is {= other}.]]`,
  })),
};

describe('a question in one setting', () => {
  const plain = inSetting(varying, variation);
  test('has the words of its case, its numbers in full and its truths', () => {
    expect(plain.stem).toBe(
      'The second gauge reads {= family/second,600/press} of {pressure 600}. What is it?',
    );
    expect(plain).toMatchObject({
      options: [
        { correct: false, why: 'No. It is {= other}.' },
        { correct: true, why: 'Yes. It is {= family/second,600/press}.' },
        { correct: false },
      ],
    });
  });
  test('finds a number written without a space', () => {
    const { stem } = inSetting({ ...varying, stem: 'It reads {=press}, and then?' }, variation);
    expect(stem).toBe('It reads {= family/second,600/press}, and then?');
  });
  test('keeps the name of a number that its family does not have', () => {
    const key = (numbers: Variation['numbers']) => {
      const asked = inSetting(number, { ...variation, numbers });
      return asked.kind === 'number' && asked.number.key;
    };
    expect(key({})).toBe('press-needed');
    expect(key({ 'press-needed': 'a/b/c' })).toBe('a/b/c');
  });
  test.each([
    [
      '[[gear: first = one]] What is it?',
      /\[\[gear: …\]\] is no choice here\. There is: box, one/u,
    ],
    ['[[box: first = one]] What is it?', /has no words for "second"/u],
  ])('%s is refused with what there is', (stem, fault) => {
    expect(() => inSetting({ ...varying, stem }, variation)).toThrow(fault);
  });
});

const variants = ['a', 'b', 'c', 'd'].map((variant, i) => ({
  ...ask({ ...single, stem: `A gauge reads {pressure ${300 + 100 * i}}. What does it show?` }),
  variant,
}));
const [first, ...others] = variants;
if (first === undefined) throw new Error('There are four variants.');
const question: Varied = { ...first, others };

describe('on its way', () => {
  const set: QuestionSet = {
    form: 1,
    lesson: 'lesson-a',
    questions: [question, ask(number)],
    objectives: [{ id: 'a-1', text: 'Read a gauge.', section: 'a-section' }],
  };
  const sent = writeQuestionSet(set);

  test('every variant comes back, each as it was', () => {
    const [got, plain] = readQuestionSet(sent, 'lesson-a').questions;
    expect(plain).not.toHaveProperty('others');
    const stems = [got, ...(got?.others ?? [])].map((one) => passageText(one?.stem ?? [], 'si'));
    expect(stems).toEqual(variants.map(({ stem }) => passageText(stem, 'si')));
    expect(got?.others?.map(({ variant, id }) => [variant, id])).toEqual(
      ['b', 'c', 'd'].map((variant) => [variant, 'q-single']),
    );
  });
  test('what the variants share goes once', () => {
    expect(sent.split('A second thing')).toHaveLength(2);
  });
  test.each([
    ['nothing in the place of a stem', { stem: [[]] }],
    ['a kind nobody knows', { kind: ['essay'] }],
    ['no right option', { options: { 0: { correct: [false] } } }],
  ])('a variant with %s is refused', (_, change) => {
    const copy = JSON.parse(sent) as Record<string, unknown>;
    copy['variants'] = { 'q-single': [change] };
    expect(() => readQuestionSet(JSON.stringify(copy), 'lesson-a')).toThrow(/lesson-a/u);
  });
});

describe('which variant', () => {
  test('follows from seed and question, and is the same each time', () => {
    const picked = (seed: number, id = 'q-single') =>
      pickVariant({ ...question, id }, seed).variant;
    for (let seed = 0; seed < 50; seed += 1) expect(picked(seed)).toBe(picked(seed));
    expect(new Set(Array.from({ length: 50 }, (_, seed) => picked(seed))).size).toBe(4);
    const ids = Array.from({ length: 50 }, (_, i) => picked(7, `q-${i}`));
    expect(new Set(ids).size).toBe(4);
  });
  test('is another one when the question comes back, and all come before one comes twice', () => {
    for (let seed = 0; seed < 40; seed += 1) {
      const seen: string[] = [];
      for (let round = 0; round < 12; round += 1) {
        const next = pickVariant(question, seed + 1000 * round, seen).variant ?? '';
        expect(next).not.toBe(seen.at(-1));
        seen.push(next);
      }
      for (const from of [0, 4, 8]) expect(new Set(seen.slice(from, from + 4)).size).toBe(4);
    }
  });
  test('answers from before there were variants, or to one that is gone, stand in no way', () => {
    expect(pickVariant(question, 5, [undefined, 'gone'])).toHaveProperty('variant');
    expect(variantNamed(question, 'gone')).toBeUndefined();
    expect(variantNamed(question, 'c')?.variant).toBe('c');
  });
  test('a question that stands as it is stays so', () => {
    const plain = ask(single);
    expect(pickVariant(plain, 3)).toEqual(plain);
  });
  test('what is asked carries no other variants along', () => {
    expect(pickVariant(question, 3)).not.toHaveProperty('others');
  });
});
