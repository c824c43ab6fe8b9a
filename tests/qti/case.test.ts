/** A car with a hidden fault goes out with its readings, their minutes, and what the cheapest of them cost. */
import { expect, test } from 'vitest';
import { caseParts } from '../../src/qti/case.ts';
import { all, one, textOf } from '../../src/qti/xml.ts';
import type { AskedCase } from '../../src/quiz/asked.ts';
import { ask, shortCase } from '../quiz/sample.ts';

/** Added up by hand: a reading takes 2 min, the tool 3, a gauge 12, warming a cold car 20. */
const ALONE = { log: 2 + 3 + 20, tap: 2 + 12 + 20, line: 2 + 12 + 20 };
/** The second of the two finds the gauge in place and the car warm. */
const BOTH_GAUGES = 2 + 12 + 20 + 2;

const asked = ask(shortCase) as AskedCase;

test('each reading stands under its name and the minutes that it takes alone', () => {
  const { body } = caseParts(asked, 'us');
  expect(
    body
      .filter(({ name }) => name === 'details')
      .map((details) => all(details, 'summary').map(textOf)),
  ).toEqual(
    Object.entries(ALONE).map(([id, minutes]) => [`The ${id} (${minutes} min on its own)`]),
  );
  expect(
    body.filter(({ name }) => name === 'details').map((details) => textOf(one(details, 'p'))),
  ).toEqual(['58 psi', '58 psi', '58 psi']);
});

test('after either answer stand the cheapest readings, in their order, with what they take together', () => {
  const { feedback } = caseParts({ ...asked, cheapest: ['line', 'tap'] }, 'si');
  expect(feedback.map((told) => textOf(one(told, 'p')))).toEqual([
    `Right. The cheapest readings that decide take ${BOTH_GAUGES} min.`,
    `Not that one. The cheapest readings that decide take ${BOTH_GAUGES} min.`,
  ]);
  for (const told of feedback) {
    const lines = all(told, 'li').map((line) => textOf(one(line, 'p')));
    expect(lines).toEqual([
      'Fits: The shared seal',
      'Does not fit: The forward rings',
      'Does not fit: Nothing at all',
      'One of the cheapest: The line: 400 kPa',
      'One of the cheapest: The tap: 400 kPa',
      'You can leave this out: The log: 400 kPa',
    ]);
  }
});
