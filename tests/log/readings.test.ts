import { expect, it, test } from 'vitest';
import { readQuestion, WARMTHS } from '../../src/diagnosis/index.ts';
import { EXAMPLES } from '../../src/log/examples/logs.ts';
import { BANDS, diagnosisReadings } from '../../src/log/index.ts';
import { exampleText, logRead } from './read-log.ts';

it.each(EXAMPLES)('the readings of %s are a question that diagnosis takes', (id) => {
  const readings = diagnosisReadings(logRead(exampleText(id)).engagements);
  const question = readQuestion({ kind: 'diagnosis', readings });
  expect('error' in question ? question.error : question.readings.length).toBe(readings.length);
  expect(readings.length).toBeGreaterThan(2);
});

test('the bands of temperature are those of diagnosis', () => {
  const there = Object.entries(WARMTHS).map(([name, { from, to }]) => [name, [from, to]]);
  expect(BANDS).toEqual(Object.fromEntries(there));
});
