import { expect, test } from 'vitest';
import { parseQuestions } from '../../src/quiz/schema.ts';
import { faultOf } from './fault.ts';
import { forms, gap, match, order, shortCase, spot } from './sample.ts';

const fault = (raw: unknown): string => faultOf([raw]);
const [first, second, ...rest] = order.steps;
const [pair, other, ...pairs] = match.pairs;
if (first === undefined || second === undefined || pair === undefined || other === undefined)
  throw new Error('no sample');

test('good ones pass unchanged', () => {
  expect(parseQuestions(forms, 'x.json')).toEqual(forms);
});

test.each<[string, unknown, string]>([
  ['too few steps', { ...order, steps: [first, second], anyOrder: [] }, 'At least three steps.'],
  ['a step twice', { ...order, steps: [first, first, second, ...rest] }, 'share the id "chock"'],
  [
    'a step without a reason',
    { ...order, steps: [{ ...first, why: '' }, second, ...rest] },
    'explanation ("why") of a step',
  ],
  [
    'an extra without a reason',
    { ...match, extra: { text: 'Park pawl', why: '' } },
    'The explanation ("why") of the "extra"',
  ],
  [
    'a group with a stranger',
    { ...order, anyOrder: [['level', 'sing']] },
    'There is no step "sing". There are: "chock"',
  ],
  ['a group of one', { ...order, anyOrder: [['level']] }, 'two steps or more'],
  ['a group of no neighbours', { ...order, anyOrder: [['chock', 'codes']] }, 'must be neighbors'],
  [
    'a step in two groups',
    {
      ...order,
      anyOrder: [
        ['chock', 'level'],
        ['level', 'codes'],
      ],
    },
    'stands in "anyOrder" twice',
  ],
  [
    'no order at all',
    { ...order, anyOrder: [['chock', 'level', 'codes', 'drive']] },
    'no order to ask for',
  ],
  ['two pairs', { ...match, pairs: [pair, other] }, 'At least three pairs.'],
  [
    'the same on the right',
    { ...match, pairs: [pair, { ...other, right: pair.right }, ...pairs] },
    'on the right read the same',
  ],
  [
    'the same on the left',
    { ...match, pairs: [pair, { ...other, left: pair.left }, ...pairs] },
    'on the left read the same',
  ],
  [
    'a pair twice',
    { ...match, pairs: [pair, { ...other, id: pair.id }, ...pairs] },
    'Two pairs share the id',
  ],
  [
    'a pair called extra',
    { ...match, pairs: [{ ...pair, id: 'extra' }, other, ...pairs] },
    'cannot have the id "extra"',
  ],
  [
    'an extra that is a partner',
    { ...match, extra: { text: pair.right, why: 'It is there already, twice.' } },
    'on the right read the same',
  ],
  [
    'neither unsafe nor missing',
    { ...spot, unsafe: undefined },
    'either an "unsafe" step or a "missing" one',
  ],
  ['both', { ...gap, unsafe: 'under' }, 'either an "unsafe" step or a "missing" one'],
  ['an unsafe stranger', { ...spot, unsafe: 'sing' }, 'There is no step "sing"'],
  [
    'a gap after a stranger',
    { ...gap, missing: { ...gap.missing, after: ['sing'] } },
    'There are: "start", "lift"',
  ],
  ['an unknown key', { ...spot, unsave: 'under' }, 'does not know "unsave"'],
  ['healthy: false', { ...spot, healthy: false }, '"healthy" is true, or left out.'],
])('%s is told in a sentence', (_, raw, says) => {
  expect(fault(raw)).toContain(says);
  expect(fault(raw)).not.toMatch(/Invalid input|expected /);
});

test('a case without a right option is told of that and of nothing else', () => {
  const options = shortCase.options.map((one) => ({ ...one, correct: false }));
  for (const healthy of [undefined, true])
    expect(fault({ ...shortCase, healthy, options }).split('\n')).toEqual([
      'x.json, question "q-case" at options: Exactly one option is right, but 0 are marked correct.',
    ]);
});

test('no step of a job may have the name of the place above the first', () => {
  const steps = spot.steps.map((one, at) => (at === 0 ? { ...one, id: 'start' } : one));
  expect(fault({ ...spot, steps })).toContain('A step cannot have the id "start".');
});
