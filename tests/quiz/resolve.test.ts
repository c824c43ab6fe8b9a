import { expect, test } from 'vitest';
import { passageText } from '../../src/quiz/asked.ts';
import { asChoices, isOrdered, resolveQuestion } from '../../src/quiz/resolve.ts';
import { readPassage } from '../../src/quiz/read-passage.ts';
import { amounts, ask, lookup, made, number, single } from './sample.ts';

test('a given comes out in both unit systems', () => {
  const { stem } = ask(single);
  expect(passageText(stem, 'si')).toBe('A gauge reads 600\u00a0kPa. What does it show?');
  expect(passageText(stem, 'us')).toBe('A gauge reads 87\u00a0psi. What does it show?');
});

test('an engine number is filled in; a bad token names itself', () => {
  expect(passageText(readPassage('Needs {= press-needed}.', lookup), 'us')).toBe(
    'Needs 58\u00a0psi.',
  );
  expect(() => readPassage('{pressure}', lookup)).toThrow(/"\{pressure\}" is no number/);
  expect(() => readPassage('{presure 600}', lookup)).toThrow(/Quantities: pressure/);
  expect(() => ask({ ...single, stem: 'It reads {= unknown}, does it?' })).toThrow(
    /"q-single": no number "unknown"/,
  );
});

test('a chart is made and goes with its question; where nothing makes one, that is said', () => {
  const withChart = { ...single, chart: 'fluids' };
  const picture = { name: 'two fluids' } as unknown as ReturnType<typeof made.chart>;
  const drawn = resolveQuestion(withChart, lookup, { ...made, chart: () => picture });
  expect(drawn.chart).toBe(picture);
  expect(ask(single)).not.toHaveProperty('chart');
  expect(() => resolveQuestion(withChart, lookup)).toThrow(
    '"q-single": it has a chart, and there is nothing here to make one.',
  );
});

test('a number question carries the engine value, its tolerance and every mistake', () => {
  const q = ask(number);
  if (q.kind !== 'number') throw new Error('not a number');
  expect(q.value).toBe(400);
  expect(q.within).toBeCloseTo(20, 12);
  expect(q.distractors.map((d) => d.value)).toEqual([300, 1600]);
});

test('a wrong rule or quantity that the engine does not have is refused', () => {
  const distractors = [{ rule: 'nowhere', why: 'x' }];
  expect(() => ask({ ...number, number: { ...number.number, distractors } })).toThrow(
    /no wrong rule "nowhere". It has: forgot-spring/,
  );
  expect(() => ask({ ...number, number: { ...number.number, quantity: 'flow' } })).toThrow(
    /asks for a flow, but .* is a pressure/,
  );
});

test('a number can be asked as a choice, smallest first', () => {
  const q = ask(number);
  if (q.kind !== 'number') throw new Error('not a number');
  const choice = asChoices(q);
  if (choice.kind !== 'single') throw new Error('not a choice');
  expect(choice.options.map((o) => o.id)).toEqual(['forgot-spring', 'right', 'took-diameter']);
  expect(choice.ordered).toBe(true);
  expect(passageText(choice.options[0]?.why ?? [], 'si')).toMatch(
    /^You get this if you forget the spring\. /,
  );
});

test('options are amounts only if all of them are', () => {
  expect(ask(amounts)).toMatchObject({ ordered: true });
  expect(ask(single)).toMatchObject({ ordered: false });
  expect(isOrdered(['about {temperature 70}', '90', 'At 120'])).toBe(true);
  expect(isOrdered(['70', 'hot'])).toBe(false);
});
