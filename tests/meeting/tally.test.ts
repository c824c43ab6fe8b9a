import { expect, test } from 'vitest';
import {
  allHands,
  barOf,
  handsFor,
  handsTyped,
  MOST_HANDS,
  withHand,
  withTyped,
} from '../../src/meeting/tally.ts';

test('a hand goes to its option and to no other', () => {
  const hands = withHand(withHand(withHand(handsFor(3), 0, 1), 2, 1), 2, 1);
  expect(hands).toEqual([1, 0, 2]);
  expect(allHands(hands)).toBe(3);
  expect(withHand(hands, 7, 1)).toEqual(hands);
});

test('less than none cannot be counted, and a stuck key ends', () => {
  expect(withHand([0, 1], 0, -1)).toEqual([0, 1]);
  expect(withHand([MOST_HANDS], 0, 1)).toEqual([MOST_HANDS]);
});

test('what was typed is a whole number of hands, or none', () => {
  expect(withTyped([0, 4], 1, 12)).toEqual([0, 12]);
  expect(withTyped([0, 4], 1, Number.NaN)).toEqual([0, 0]);
  expect(withTyped([0, 4], 1, -3)).toEqual([0, 0]);
  expect(withTyped([0, 4], 1, 2.4)).toEqual([0, 2]);
});

test('a count is digits up to the most, and an empty field is no hand', () => {
  expect(['7', ' 12 ', '', '0', '007', String(MOST_HANDS)].map(handsTyped)).toEqual([
    ...[7, 12, 0, 0, 7],
    MOST_HANDS,
  ]);
  for (const text of ['abc', '-3', '2.4', '1e2', String(MOST_HANDS + 1), '1 2'])
    expect(handsTyped(text), text).toBeUndefined();
});

test('hands that were kept for another vote are cut to this one', () => {
  expect(handsFor(2, [3, 4, 5])).toEqual([3, 4]);
  expect(handsFor(3, [3])).toEqual([3, 0, 0]);
});

test('the longest bar is the most hands; without hands there is none', () => {
  expect([0, 1, 2].map((i) => barOf([6, 3, 0], i))).toEqual([1, 0.5, 0]);
  expect(barOf([0, 0], 0)).toBe(0);
});
