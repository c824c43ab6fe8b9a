import { expect, test } from 'vitest';
import { parseQuestions } from '../../src/quiz/schema.ts';
import { faultOf } from './fault.ts';
import { all, number, several, single } from './sample.ts';

const fault = faultOf;

test('good questions pass unchanged', () => {
  expect(parseQuestions(all, 'x.json')).toEqual(all);
});

test('an unknown key is refused by name, with what is allowed, file and question', () => {
  const message = fault([{ ...single, objetives: ['a-1'] }]);
  expect(message).toContain('x.json, question "q-single"');
  expect(message).toContain('does not know "objetives"');
  expect(message).toContain('objectives');
});

test('an unknown key deep inside is refused too', () => {
  const options = [
    { id: 'one', text: 'The thing', correct: true, why: 'Because it is so.', hint: 'x' },
    { id: 'two', text: 'A thing', correct: false, why: 'Because it is not.' },
  ];
  expect(fault([{ ...single, options }])).toContain('at options.0: An option does not know "hint"');
});

test('a question with several answers has three options or more', () => {
  if (several.kind !== 'several') throw new Error('no sample');
  expect(fault([{ ...several, options: several.options.slice(0, 2) }])).toContain(
    'At least three options.',
  );
});

test('every option has an explanation of its own', () => {
  const options = [
    { id: 'one', text: 'The thing', correct: true },
    { id: 'two', text: 'A thing', correct: false, why: 'Because it is not.' },
  ];
  expect(fault([{ ...single, options }])).toContain(
    'The explanation ("why") of an option is missing',
  );
});

test('every fault of a file is listed at once', () => {
  const message = fault([
    { ...single, level: 'hard' },
    { ...number, number: { ...number.number, tolerance: {} } },
  ]);
  expect(message.split('\n')).toHaveLength(2);
  expect(message).toContain('The level is "recall", "apply" or "diagnose".');
  expect(message).toContain('The tolerance needs');
});

test('wrong kind, wrong quantity, no list: each a sentence', () => {
  expect(fault([{ ...single, kind: 'essay' }])).toContain('The kind of a question is');
  expect(fault([{ ...number, number: { ...number.number, quantity: 'warmth' } }])).toContain(
    '"warmth" is no quantity. Choose one of: pressure',
  );
  expect(fault({ questions: [] })).toContain('list of questions in square brackets');
});

test('no message is zod talking to programmers', () => {
  for (const raw of [
    [null],
    ['text'],
    [{}],
    [{ kind: 'single' }],
    [{ kind: 'number', number: 3 }],
  ]) {
    const message = fault(raw);
    expect(message).not.toMatch(/Invalid input|expected string, received/);
  }
});

test.each([
  [{ relative: 0.26 }, '"relative" may be 0.25 at most'],
  [{ relative: 0 }, '"relative" must be above 0.'],
  [{ absolute: -1 }, '"absolute" must be above 0.'],
  [{ absolute: '5' }, '"absolute" must be a number above 0.'],
])('a tolerance of %j is refused with its own reason', (tolerance, says) => {
  expect(fault([{ ...number, number: { ...number.number, tolerance } }])).toContain(says);
});

test.each(['Not a Slug', '', 'common practice', 'two--hyphens', '-edge'])(
  'the source "%s" is refused with what a source may be',
  (source) => {
    expect(fault([{ ...single, source }])).toBe(
      'x.json, question "q-single" at source: The source is a source id, "engine", or "common practice, no source".',
    );
  },
);

test.each(['engine', 'common practice, no source', 'viscosity-standard-2'])(
  'the source "%s" is taken',
  (source) => {
    expect(parseQuestions([{ ...single, source }], 'x.json')[0]?.source).toBe(source);
  },
);
