import { expect, test } from 'vitest';
import { carryOn } from '../../../src/layouts/course-progress/carry-on.ts';

const lessons = ['one', 'two', 'three'].map((id, index) => ({
  id,
  title: `Lesson ${id}`,
  order: index + 1,
  minutes: 9,
}));
const offer = (done: string[], last: string | null, section: string | null = null) =>
  carryOn(lessons, {
    done,
    last:
      last === null
        ? null
        : { lesson: last, section: section === null ? null : { id: section, title: 'Wear' } },
  });

test('a first visit starts at the first lesson', () => {
  expect(offer([], null)).toMatchObject({
    href: '/lessons/one/',
    button: 'Start with lesson 1',
    about: 'Lesson one. 9 minutes.',
  });
});
test('a lesson left in the middle is carried on at its section', () => {
  expect(offer(['one'], 'two', 'wear')).toEqual({
    href: '/lessons/two/#wear',
    button: 'Carry on with lesson 2',
    about: 'Lesson two. You were at “Wear”.',
  });
  expect(offer([], 'two')?.href).toBe('/lessons/two/');
});
test('a lesson marked as done leads to the next that is not, going round', () => {
  expect(offer(['one'], 'one', 'wear')?.href).toBe('/lessons/two/');
  expect(offer(['one', 'two'], 'one')?.href).toBe('/lessons/three/');
  expect(offer(['three'], 'three')?.href).toBe('/lessons/one/');
});
test('a lesson that is no longer there is passed over', () => {
  expect(offer(['one'], 'gone', 'wear')?.href).toBe('/lessons/two/');
});
test('with everything done it says so', () => {
  expect(offer(['one', 'two', 'three'], 'two')?.about).toContain('all 3 lessons done');
  expect(carryOn([], { done: [], last: null })).toBeNull();
});
test('a section id cannot lead off the page', () => {
  expect(offer([], 'two', '/"><x>')?.href).toBe('/lessons/two/#%2F%22%3E%3Cx%3E');
});
