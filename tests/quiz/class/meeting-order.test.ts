/** Which topic comes first, by hand: certain and wrong, then how many missed it, then how large a part of those asked. */
import { expect, test } from 'vitest';
import type { Learner } from '../../../src/quiz/class/first-answers.ts';
import { itemStatistics } from '../../../src/quiz/class/item-statistics.ts';
import { meetingTopics } from '../../../src/quiz/class/meeting-topics.ts';

/** "a3x": question a, certain, wrong; "b1v": question b, a guess, right. */
const learner = (name: string, said: string): Learner => ({
  name,
  answers: said
    .split(' ')
    .filter((one) => one !== '')
    .map((one, at) => ({
      item: one.charAt(0),
      at,
      ids: [],
      certainty: Number(one.charAt(1)) as 1 | 2 | 3,
      result: one.endsWith('v') ? 'right' : 'wrong',
    })),
});
const items = ['a', 'b', 'c', 'd'].map((id) => ({ id, concept: `idea-${id}`, lesson: 'l' }));
const order = (...said: readonly string[]) =>
  meetingTopics(
    items,
    said.map((one, i) => learner(String(i), one)),
  ).map(
    ({ concept, asked, missed, certain }) => `${concept.slice(-1)} ${missed}/${asked} ${certain}`,
  );

test('more who were certain come first, though fewer missed it', () => {
  expect(order('a1x b3x', 'a1x b3x', 'a1x')).toEqual(['b 2/2 2', 'a 3/3 0']);
});
test('with as many certain, more who missed it come first, though a smaller part', () => {
  expect(order('b1x', 'b1x a1x', 'a1x', 'a1x', 'a1v', 'a1v')).toEqual(['a 3/5 0', 'b 2/2 0']);
});
test('with as many who missed it, the larger part comes first', () => {
  expect(order('a1x b1x', 'a1x b1x', 'a1v', 'a1v')).toEqual(['b 2/2 0', 'a 2/4 0']);
  expect(order('a1x b1x', 'a1x b1x', 'b1v', 'b1v')).toEqual(['a 2/2 0', 'b 2/4 0']);
});
test('all three at once, whatever order the bank has them in', () => {
  expect(order('a1x b1x c3x d1x', 'a1x b1x c1x d1x', 'a1x b1v d1v', 'b1v', '')).toEqual([
    'c 2/2 1',
    'a 3/3 0',
    'd 2/3 0',
    'b 2/4 0',
  ]);
});
test('who was not asked is not counted', () => {
  expect(order('a1x', 'a1x', 'b1v', '', '')).toEqual(['a 2/2 0']);
});
test('of two questions on one idea the one that more missed leads to its lesson', () => {
  const two = [
    { id: 'a', concept: 'same', lesson: 'first' },
    { id: 'b', concept: 'same', lesson: 'second' },
  ];
  const [topic] = meetingTopics(two, [learner('A', 'a1x b1x'), learner('B', 'a1v b1x')]);
  expect(topic).toMatchObject({ item: 'b', lesson: 'second', missed: 2 });
});

const statistics = (...said: readonly string[]) =>
  itemStatistics(said.map((one, i) => learner(String(i), one)));

test('of questions that as many had wrong, the one that fewer of those asked had right comes first', () => {
  const all = statistics('a1x b1x', 'a1v b1v', 'a1v', 'a1v c1x', 'c1x');
  expect(all.map(({ item, right, answers }) => [item, right, answers])).toEqual([
    ['c', 0, 2],
    ['b', 1, 2],
    ['a', 3, 4],
  ]);
});

test('thirty answers are enough for a share and a correlation, twenty-nine are not', () => {
  // Of thirty the first ten had a right, and b with it: the two go together altogether.
  const said = Array.from({ length: 30 }, (_, i) => (i < 10 ? 'a1v b1v' : 'a1x b1x'));
  const [thirty] = statistics(...said);
  expect(thirty?.p).toBeCloseTo(1 / 3, 12);
  expect(thirty?.itemRest).toBeCloseTo(1, 12);
  const [fewer] = statistics(...said.slice(1));
  expect(fewer).toMatchObject({ answers: 29, p: undefined, itemRest: undefined });
  // Thirty answers, but one of them had nothing else to compare it with.
  const alone = statistics(...said.slice(1), 'a1x').find(({ item }) => item === 'a');
  expect(alone).toMatchObject({ answers: 30, itemRest: undefined });
  expect(alone?.p).toBeCloseTo(9 / 30, 12);
});
