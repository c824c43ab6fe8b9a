import { expect, test } from 'vitest';
import { course } from '../../src/lessons/course.ts';
import { areas, lessonsByArea } from '../../src/lessons/lesson-areas.ts';

test('every lesson stands in one area, and no area is empty', () => {
  const byArea = lessonsByArea();
  expect(byArea.map(({ area }) => area)).toEqual(areas);
  for (const { lessons } of byArea) expect(lessons).not.toHaveLength(0);
  const ids = byArea.flatMap(({ lessons }) => lessons.map(({ id }) => id));
  expect([...ids].sort()).toEqual(course.map(({ id }) => id).sort());
});

test('a lesson without an area is named', () => {
  const lost = { id: 'lost', title: 'Lost', needs: [], about: '' };
  expect(() => lessonsByArea([lost])).toThrow('"lost" has no area');
});
