import { expect, test } from 'vitest';
import { explainedOpen } from '../../../src/quiz/rehearsal/explained-open.ts';
import { gradedAgain, standingOf } from '../../../src/quiz/rehearsal/standing.ts';
import type { Asked } from '../../../src/quiz/asked.ts';
import { asked as samples } from '../sample.ts';

const sample = (id: string): Asked => {
  const found = samples.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no sample "${id}"`);
  return found;
};
const chosen = (...ids: string[]) => ({ kind: 'chosen' as const, ids });
const typed = (text: string) => ({ kind: 'typed' as const, text, system: 'si' as const });

test.each([
  ['q-single', undefined, undefined, 'open'],
  ['q-single', chosen(), 3, 'open'],
  ['q-single', chosen('two'), undefined, 'unsure'],
  ['q-single', chosen('two'), 1, 'answered'],
  ['q-several', chosen('two', 'three'), 2, 'answered'],
  ['q-number', typed('  '), 2, 'open'],
  ['q-number', typed('lots'), 2, 'unread'],
  ['q-number', typed('lots'), undefined, 'unread'],
  ['q-number', typed('400 kPa'), undefined, 'unsure'],
  ['q-number', typed('7'), 3, 'answered'],
  // An option that the question had when it was answered.
  ['q-single', chosen('gone'), 3, 'unread'],
] as const)('%s with %j, sure %j, stands %s', (id, given, certainty, standing) => {
  expect(standingOf(sample(id), { given, certainty })).toBe(standing);
});

test('an answer to a question that has changed since is not graded', () => {
  expect(gradedAgain(sample('q-single'), chosen('gone'), 2)).toBeUndefined();
  expect(gradedAgain(sample('q-single'), typed('5'), 2)).toBeUndefined();
});

function linesOf(asked: Asked): number {
  switch (asked.kind) {
    case 'number':
      return 1 + asked.distractors.length;
    case 'single':
    case 'several':
      return asked.options.length;
    case 'order':
      return asked.steps.length;
    case 'match':
      return asked.partners.length;
    case 'spot':
      return asked.steps.length + Number(asked.missing !== undefined);
    case 'case':
      return asked.readings.length + asked.options.length;
  }
}

test('every question that was left open is explained whole, and nothing in it is said to be taken', () => {
  for (const asked of samples) {
    const explained = explainedOpen(asked);
    expect(explained, asked.id).toHaveLength(linesOf(asked));
    expect(explained.some(({ correct }) => correct)).toBe(true);
    expect(explained.some(({ taken }) => taken)).toBe(false);
  }
});
