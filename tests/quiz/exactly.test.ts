/** Sentences whole, as they are read: verdicts of an answer, and what an author is told of a question file, with the place. */
import { describe, expect, test } from 'vitest';
import { grade } from '../../src/quiz/grade.ts';
import { apportion } from '../../src/quiz/rehearsal/apportion.ts';
import { parseQuestions } from '../../src/quiz/schema.ts';
import { startSession, answer, next } from '../../src/quiz/session.ts';
import { faultOf } from './fault.ts';
import { ask, gap, match, number, order, several, shortCase, single, spot } from './sample.ts';

const four = {
  ...several,
  options: ['a', 'b', 'c', 'd'].map((id, place) => ({
    ...{ id, text: `Thing ${id}`, correct: place < 2 },
    why: `Because option ${id} is what it is.`,
  })),
} as typeof several;

describe('verdicts', () => {
  test.each([
    [['a', 'b'], 'Right, all 2 of them.'],
    [['a'], 'You found 1 of the 2 that fit.'],
    [['a', 'c'], 'You found 1 of the 2 that fit, and ticked 1 that does not.'],
    [['a', 'b', 'c', 'd'], 'You found 2 of the 2 that fit, and ticked 2 that do not.'],
    [['c', 'd'], 'You found 0 of the 2 that fit, and ticked 2 that do not.'],
  ])('several: %j', (ids, verdict) => {
    const graded = grade(ask(four), { kind: 'chosen', ids }, 1);
    expect(graded).toMatchObject({ ok: true, outcome: { verdict } });
  });
  test.each([
    ['400 kPa', 'Right.'],
    ['300 kPa', 'Not that. This is the number you get if you forget the spring.'],
    ['1600 kPa', 'Not that. This is the number you get if you take the diameter for the radius.'],
    ['430 kPa', 'Not that. It is too high.'],
    ['340 kPa', 'Not that. It is too low.'],
  ])('a number: %s', (text, verdict) => {
    const graded = grade(ask(number), { kind: 'typed', text, system: 'si' }, 1);
    expect(graded).toMatchObject({ ok: true, outcome: { verdict } });
  });
  test('what is thrown at a mistake of ours names the question', () => {
    const chosen = (q: typeof order | typeof match | typeof single, ids: readonly string[]) => () =>
      grade(ask(q), { kind: 'chosen', ids }, 1);
    expect(chosen(single, ['nine'])).toThrow('Question "q-single" has no option "nine".');
    expect(chosen(order, ['chock', 'nine'])).toThrow('Question "q-order" has no "nine".');
    expect(chosen(order, ['chock'])).toThrow('Question "q-order" has 4 steps, each once.');
    expect(chosen(match, ['nine:both'])).toThrow('Question "q-match" has no "nine".');
    expect(() => grade(ask(single), { kind: 'typed', text: '4', system: 'si' }, 1)).toThrow(
      'Question "q-single" is answered by choosing, not by typing.',
    );
    expect(() => grade(ask(number), { kind: 'chosen', ids: [] }, 1)).toThrow(
      'Question "q-number" is answered by typing a number.',
    );
  });
});

describe('a session', () => {
  const session = startSession([ask(single)], 1, 'kept');
  const given = { kind: 'chosen', ids: ['one'] } as const;
  test('says what is missing, the answer before the certainty', () => {
    expect(answer(session, { kind: 'chosen', ids: [] }, undefined)).toEqual({
      ok: false,
      missing: 'answer',
      sentence: 'Choose one answer first.',
    });
    expect(answer(session, given, undefined)).toEqual({
      ok: false,
      missing: 'certainty',
      sentence: 'Say how sure you are first: it counts only before you know.',
    });
  });
  test('refuses a second answer, one after the end, and to begin with nothing', () => {
    const once = answer(session, given, 2);
    if (!once.ok) throw new Error(once.sentence);
    expect(() => answer(once.session, given, 2)).toThrow(
      'Question "q-single" has been answered already.',
    );
    expect(() => answer(next(once.session), given, 2)).toThrow(
      'Every question of this session has been answered.',
    );
    expect(() => startSession([], 1)).toThrow('A session needs at least one question.');
  });
});

test.each([
  [[1, -1], 5, 'Shares are numbers from 0, not all of them 0; "1, -1" are not.'],
  [[0, 0], 5, 'Shares are numbers from 0, not all of them 0; "0, 0" are not.'],
  [[1], 1.5, 'What is shared out is a whole number from 0; "1.5" is none.'],
] as const)('sharing %j among %d', (shares, seats, sentence) => {
  expect(() => apportion(shares, seats)).toThrow(new RangeError(sentence));
});

describe('a question file', () => {
  const fault = (raw: unknown): string => faultOf([raw]);
  const [first, second, ...rest] = order.steps;
  const [pair, other, ...pairs] = match.pairs;
  const options = (many: number) =>
    Array.from({ length: many }, (_, i) => ({
      ...{ id: `o${i}`, text: `Thing ${i}`, correct: i < 1 },
      why: `Because option ${i} is what it is.`,
    }));
  const steps = (many: number) =>
    Array.from({ length: many }, (_, i) => ({
      ...{ id: `s${i}`, text: `Step ${i}` },
      why: `Because step ${i} is what it is.`,
    }));
  const readings = (many: number) =>
    Array.from({ length: many }, (_, i) => ({ test: `test-${i}`, why: 'Because it told a lot.' }));

  test.each<[string, object, string]>([
    ['single', { ...single, options: options(1) }, 'at options: At least two options.'],
    [
      'single',
      { ...single, options: options(6) },
      'at options: At most five options; three are enough.',
    ],
    ['single', { ...single, form: 'x' }, 'at form: The "form" is "deciding-reading", or left out.'],
    ['several', { ...several, options: options(2) }, 'at options: At least three options.'],
    ['several', { ...several, options: options(7) }, 'at options: At most six options.'],
    ['order', { ...order, anyOrder: [], steps: steps(2) }, 'at steps: At least three steps.'],
    [
      'order',
      { ...order, anyOrder: [], steps: steps(8) },
      'at steps: At most seven steps; five are enough.',
    ],
    [
      'order',
      { ...order, steps: [first, first, second, ...rest] },
      'at steps: Two steps share the id "chock".',
    ],
    [
      'order',
      { ...order, anyOrder: [['level', 'sing']] },
      'at anyOrder.0: There is no step "sing". There are: "chock", "level", "codes", "drive".',
    ],
    [
      'order',
      {
        ...order,
        anyOrder: [
          ['level', 'codes'],
          ['chock', 'drive'],
        ],
      },
      'at anyOrder.1: The steps "chock", "drive" must be neighbors to stand in any order.',
    ],
    [
      'order',
      {
        ...order,
        anyOrder: [
          ['chock', 'level'],
          ['level', 'codes'],
        ],
      },
      'at anyOrder.1: The step "level" stands in "anyOrder" twice.',
    ],
    [
      'order',
      { ...order, anyOrder: [['chock', 'level', 'codes', 'drive']] },
      'at anyOrder: Every step may stand anywhere: then there is no order to ask for.',
    ],
    [
      'order',
      { ...order, anyOrder: [['level']] },
      'at anyOrder.0: A group in "anyOrder" has two steps or more.',
    ],
    ['match', { ...match, pairs: [pair, other] }, 'at pairs: At least three pairs.'],
    [
      'match',
      {
        ...match,
        pairs: [0, 1, 2, 3, 4, 5].map((i) => ({
          ...pair,
          id: `p${i}`,
          left: `L${i}`,
          right: `R${i}`,
        })),
      },
      'at pairs: At most five pairs.',
    ],
    [
      'match',
      { ...match, pairs: [pair, { ...other, id: pair?.id }, ...pairs] },
      'at pairs: Two pairs share the id "both".',
    ],
    [
      'match',
      { ...match, pairs: [{ ...pair, id: 'extra' }, other, ...pairs] },
      'at pairs: A pair cannot have the id "extra".',
    ],
    [
      'match',
      { ...match, extra: { text: 'SHARED seal', why: 'It is there already, twice.' } },
      'at pairs: Two entries on the right read the same.',
    ],
    [
      'match',
      { ...match, pairs: [pair, { ...other, left: 'drive AND reverse' }, ...pairs] },
      'at pairs: Two entries on the left read the same.',
    ],
    [
      'spot',
      { ...spot, steps: [...spot.steps, spot.steps[0]] },
      'at steps: Two steps share the id "lift".',
    ],
    [
      'spot',
      { ...spot, unsafe: undefined },
      ': It has either an "unsafe" step or a "missing" one.',
    ],
    ['gap', { ...gap, unsafe: 'under' }, ': It has either an "unsafe" step or a "missing" one.'],
    [
      'spot',
      { ...spot, unsafe: 'sing' },
      'at unsafe: There is no step "sing". There are: "lift", "under", "engine".',
    ],
    [
      'gap',
      { ...gap, missing: { ...gap.missing, after: ['lift', 'sing'] } },
      'at missing.after: There is no step "sing". There are: "start", "lift", "under", "engine".',
    ],
    [
      'gap',
      { ...gap, missing: { ...gap.missing, after: [] } },
      'at missing.after: "after" names the step above the gap, or "start".',
    ],
    [
      'case',
      { ...shortCase, readings: readings(2) },
      'at readings: At least three readings to choose from.',
    ],
    ['case', { ...shortCase, readings: readings(8) }, 'at readings: At most seven readings.'],
    [
      'case',
      { ...shortCase, readings: [...readings(3), ...readings(1)] },
      'at readings: A reading stands there twice.',
    ],
    [
      'case',
      { ...shortCase, options: shortCase.options.slice(0, 1) },
      'at options: At least two options.',
    ],
    [
      'case',
      {
        ...shortCase,
        options: Array.from({ length: 6 }, (_, i) => ({
          ...shortCase.options[i === 0 ? 0 : 1],
          id: `o${i}`,
        })),
      },
      'at options: At most five options.',
    ],
    [
      'case',
      { ...shortCase, healthy: true },
      'at options: A case is "healthy": true if, and only if, its right option has no faults.',
    ],
    [
      'case',
      { ...shortCase, arrives: 'warm' },
      'at arrives: "arrives" is "frost", "cold" or "hot".',
    ],
    [
      'number',
      { ...number, number: { ...number.number, tolerance: {} } },
      'at number.tolerance: The tolerance needs "relative", "absolute" or both.',
    ],
    [
      'number',
      { ...number, number: { ...number.number, distractors: number.number.distractors.slice(1) } },
      'at number.distractors: A number needs at least two distractors, each the result of a mistake people make.',
    ],
    [
      'number',
      { ...number, number: { ...number.number, entry: 'say' } },
      'at number.entry: The "entry" of a number is "type" or "choose".',
    ],
  ])('%s: %#', (id, raw, says) => {
    const at = says.startsWith(':') ? says : ` ${says}`;
    expect(fault(raw).split('\n')).toContain(`x.json, question "q-${id}"${at}`);
  });
  test('five options, seven steps, five pairs and seven readings are taken', () => {
    expect(fault({ ...single, options: options(5) })).toBe('accepted');
    expect(fault({ ...several, options: options(6) })).toBe('accepted');
    expect(fault({ ...order, anyOrder: [], steps: steps(7) })).toBe('accepted');
    expect(fault({ ...shortCase, readings: readings(7) })).toBe('accepted');
    const one = match.pairs[0];
    const five = [0, 1, 2, 3, 4].map((i) => ({
      ...one,
      id: `p${i}`,
      left: `L${i}`,
      right: `R${i}`,
    }));
    expect(fault({ ...match, pairs: five })).toBe('accepted');
  });
  test('a thing without a name is named by its place, and what is no list is told so', () => {
    expect(fault(7)).toBe(
      'x.json, question number 1: The kind of a question is "single", "several", "number", "order", "match", "spot" or "case".',
    );
    expect(fault({ ...single, id: 4 })).toMatch(/^x\.json, question number 1 at id: /u);
    expect(() => parseQuestions({}, 'x.json')).toThrow(
      'x.json: a question file is a list of questions in square brackets.',
    );
  });
});
