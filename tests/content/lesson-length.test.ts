// The main path of each lesson, measured as the page tells it, against the longest that it may take.
import { expect, test } from 'vitest';
import { LONGEST, MAIN_QUESTIONS } from '../../src/lessons/lesson-times.ts';
import { timed } from '../../src/lessons/timed.ts';
import { lessons } from './lesson-prose.ts';

test.each(lessons)(`$id takes ${LONGEST} minutes at most`, ({ body, head }) => {
  const { times, minutes, asked } = timed({ data: head, body });
  expect(times.simulate).toBeGreaterThan(0);
  expect(asked.main).toBe(MAIN_QUESTIONS);
  expect(minutes, JSON.stringify(times)).toBeLessThanOrEqual(LONGEST);
});
