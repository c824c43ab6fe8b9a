import { expect, test } from 'vitest';
import type { ClassAnswer, Learner } from '../../../src/quiz/class/first-answers.ts';
import { itemStatistics } from '../../../src/quiz/class/item-statistics.ts';
import truth from '../../truth/class_items.json' with { type: 'json' };

const learners: readonly Learner[] = truth.learners.map(({ name, answers }) => ({
  name,
  answers: answers.map(({ item, option, certainty }, at): ClassAnswer => ({
    item,
    at,
    ids: [option],
    result: option === 'a' ? 'right' : 'wrong',
    certainty: certainty as 1 | 2 | 3,
  })),
}));

test('each question of a class of 48 stands as another program says, by another formula (tests/truth/class_items.py)', () => {
  const all = itemStatistics(learners);
  expect(new Set(all.map(({ item }) => item))).toEqual(new Set(Object.keys(truth.items)));
  for (const one of all) {
    const other = truth.items[one.item as keyof typeof truth.items];
    expect(one, one.item).toMatchObject({
      answers: other.answers,
      right: other.right,
      certainAndWrong: other.certainAndWrong,
    });
    expect(Object.fromEntries(one.chosen), one.item).toEqual(other.chosen);
    expect(one.p ?? null, one.item).toBe(other.p);
    // The same sums in another order: the last digits differ.
    if (other.itemRest === null) expect(one.itemRest, one.item).toBeUndefined();
    else expect(one.itemRest, one.item).toBeCloseTo(other.itemRest, 10);
  }
});

test('what most had wrong comes first, and under thirty answers nothing is said of share and correlation', () => {
  const all = itemStatistics(learners);
  const wrong = all.map(({ right, answers }) => answers - right);
  expect(wrong).toEqual([...wrong].sort((a, b) => b - a));
  expect(all.find(({ item }) => item === 'few')).toMatchObject({
    answers: 29,
    p: undefined,
    itemRest: undefined,
  });
});

test('what was answered again after its explanation changes nothing', () => {
  const again = learners.map(({ name, answers }) => ({
    name,
    answers: [...answers, ...answers.map((one) => ({ ...one, result: 'right' as const }))],
  }));
  expect(itemStatistics(again)).toEqual(itemStatistics(learners));
});
