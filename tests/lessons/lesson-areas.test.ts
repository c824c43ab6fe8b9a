import { expect, test } from 'vitest';
import { course } from '../../src/lessons/course.ts';
import { lessonsByArea } from '../../src/lessons/lesson-areas.ts';
import { areas } from '../../src/quiz/rehearsal/blueprint.ts';

test('every lesson stands in one area, and no area is empty', () => {
  const byArea = lessonsByArea();
  expect(byArea.map(({ area }) => area)).toEqual(areas);
  for (const { lessons } of byArea) expect(lessons).not.toHaveLength(0);
  const ids = byArea.flatMap(({ lessons }) => lessons.map(({ id }) => id));
  expect([...ids].sort()).toEqual(course.map(({ id }) => id).sort());
});

test('a lesson stands where most of its objectives do', () => {
  const areaOf = new Map(
    lessonsByArea().flatMap(({ area, lessons }) => lessons.map(({ id }) => [id, area])),
  );
  // Three of four about logs, and about tests, beside one about safety; and one each of three areas.
  expect(areaOf.get('live-data')).toBe('log');
  expect(areaOf.get('air-on-the-bench')).toBe('tests');
  expect(areaOf.get('how-hard-the-converter-pushes')).toBe('fluid');
});

test('a lesson without an area is named', () => {
  const lost = { id: 'lost', title: 'Lost', needs: [], about: '' };
  expect(() => lessonsByArea([lost])).toThrow('"lost" has no area');
});
