import { describe, expect, test } from 'vitest';
import { questionBank } from '../../src/lessons/question-bank.ts';
import { cheapestThatDecide } from '../../src/question-cases/cheapest.ts';
import { readingsOf } from '../../src/question-cases/index.ts';
import { passageText } from '../../src/quiz/asked.ts';
import { minutesOf, type Priced } from '../../src/quiz/case-minutes.ts';
import type { CaseQuestion } from '../../src/quiz/schema.ts';

const cases = questionBank().filter((q): q is CaseQuestion => q.kind === 'case');
const named = (id: string): CaseQuestion => {
  const found = cases.find((q) => q.id === id);
  if (found === undefined) throw new Error(`no case "${id}"`);
  return found;
};

test('there are cases, some with nothing wrong', () => {
  expect(cases.length).toBeGreaterThanOrEqual(6);
  expect(cases.filter(({ healthy }) => healthy).length).toBeGreaterThanOrEqual(2);
});

// Trade's rules of thumb (common practice, no source), held against what the engine reads.
test('a shared seal is late in both ranges, and its line stands', () => {
  const { readings } = readingsOf(named('taxi-at-the-lights'));
  const reads = Object.fromEntries(readings.map((one) => [one.id, passageText(one.reads, 'si')]));
  expect(Number.parseFloat(reads['stopTime.drive.hot'] ?? '')).toBeGreaterThan(1);
  expect(Number.parseFloat(reads['stopTime.reverse.hot'] ?? '')).toBeGreaterThan(1);
  expect(reads['line.drive.700.hot']).toMatch(/^600.kPa$/u);
});
test('a sensor that never reads zero is found with the engine off, for a scan tool and a minute', () => {
  const { cheapest, readings } = readingsOf(named('code-and-pulls-like-new'));
  expect(cheapest).toEqual(['engineOffTurbine']);
  expect(
    minutesOf(
      readings.filter(({ id }) => cheapest.includes(id)),
      'cold',
    ),
  ).toBe(4);
});

describe('what cannot be is told in a sentence', () => {
  const one = named('taxi-at-the-lights');
  const [right, ...others] = one.options;
  if (right === undefined) throw new Error('no option');
  test.each<[string, Partial<CaseQuestion>, string]>([
    [
      'no such test',
      { readings: [{ test: 'horoscope', why: 'It tells nothing at all.' }] },
      'no reading "horoscope"',
    ],
    [
      'a test with the pan off',
      { readings: [{ test: 'airTest.forward', why: 'Too much to open.' }] },
      'no reading "airTest.forward"',
    ],
    [
      'no such fault',
      { options: [right, { ...right, correct: false, faults: { gremlin: { severity: 1 } } }] },
      'no fault "gremlin"',
    ],
    [
      'no such circuit',
      {
        options: [
          right,
          { ...right, correct: false, faults: { openPort: { severity: 1, circuit: 'fifth' } } },
        ],
      },
      'no circuit "fifth"',
    ],
    [
      'a circuit left out',
      { options: [right, { ...right, correct: false, faults: { openPort: { severity: 1 } } }] },
      'needs "circuit"',
    ],
    [
      'readings that leave a doubt',
      { readings: [{ test: 'stopTime.drive.hot', why: 'All of them are late.' }] },
      'do not tell the right option from rings',
    ],
  ])('%s', (_, change, says) => {
    expect(() => readingsOf({ ...one, ...change })).toThrow(says);
  });
  expect(others.length).toBeGreaterThan(0);
});

test('the cheapest set is no dearer than any other that decides', () => {
  const reading = (id: string, minutes: number): Priced => ({ id, minutes, setUps: [] });
  const readings = [reading('a', 9), reading('b', 4), reading('c', 4), reading('d', 7)];
  const decides = (ids: readonly string[]) =>
    ids.includes('a') || (ids.includes('b') && ids.includes('c'));
  expect(cheapestThatDecide(readings, decides, 'cold')?.map(({ id }) => id)).toEqual(['b', 'c']);
  expect(cheapestThatDecide(readings, () => false, 'cold')).toBeUndefined();
});
