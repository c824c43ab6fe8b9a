// The main path of each lesson, measured as the page tells it, against the longest that it may take.
import { expect, test } from 'vitest';
import { LONGEST } from '../../src/lessons/lesson-times.ts';
import { timed } from '../../src/lessons/timed.ts';
import { lessons } from './lesson-prose.ts';

/** Lessons that still take longer, with their minutes. A figure here only falls, and at the bar its line goes. */
const STILL_LONGER: Readonly<Record<string, number>> = {
  'regulator-to-clutch': 16,
};

test.each(lessons)(`$id takes ${LONGEST} minutes at most`, ({ id, body, head }) => {
  const { minutes, times } = timed({ data: head, body });
  expect(times.simulate).toBeGreaterThan(0);
  expect(minutes, JSON.stringify(times)).toBeLessThanOrEqual(STILL_LONGER[id] ?? LONGEST);
});

test('the list names lessons that are longer, by what they are', () => {
  for (const [id, told] of Object.entries(STILL_LONGER)) {
    const lesson = lessons.find((one) => one.id === id);
    if (lesson === undefined) throw new Error(`There is no lesson "${id}": take its line out.`);
    const { minutes } = timed({ data: lesson.head, body: lesson.body });
    expect(minutes, `${id} is shorter now: write that, or take its line out`).toBe(told);
    expect(told, id).toBeGreaterThan(LONGEST);
  }
});
