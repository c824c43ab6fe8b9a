import { expect, test } from 'vitest';
import { spreadOf } from '../../src/diagnosis/spread.ts';

// By hand: the first value at or below which so much of the weight lies.
test('5, 50 and 95 % of the weight, in whatever order the values come', () => {
  expect(
    spreadOf([
      [3, 0.5],
      [1, 0.25],
      [2, 0.25],
    ]),
  ).toEqual([1, 2, 3]);
  // 0.04 lies at 1, 0.92 up to 2.
  expect(
    spreadOf([
      [2, 0.88],
      [3, 0.08],
      [1, 0.04],
    ]),
  ).toEqual([2, 2, 3]);
});
test('a value that comes twice has both weights', () => {
  expect(
    spreadOf([
      [1, 0.03],
      [5, 0.94],
      [1, 0.03],
    ]),
  ).toEqual([1, 5, 5]);
});
test('weights need not sum to 1', () => {
  expect(
    spreadOf([
      [7, 0.1],
      [9, 0.3],
    ]),
  ).toEqual([7, 9, 9]);
  expect(
    spreadOf([
      [7, 30],
      [9, 10],
    ]),
  ).toEqual([7, 7, 9]);
});
test('a tenth, ten times, is all of it', () => {
  // 0.1 ten times over comes to less than 1 in floating point.
  expect(spreadOf(Array.from({ length: 10 }, (_, i) => [i, 0.1] as const))).toEqual([0, 4, 9]);
});
test('of nothing there is no value', () => {
  expect(spreadOf([])).toEqual([NaN, NaN, NaN]);
});
