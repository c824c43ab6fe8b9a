import { expect, test } from 'vitest';
import { drawSettings } from '../../src/variations/draw.ts';
import { family, idOf, settingOf, steps } from '../../src/variations/family.ts';
import { variationNumber, variationOf } from '../../src/variations/index.ts';

const cars = family({ box: ['first', 'second'], hot: steps(80, 120, 5) }, () => ({ numbers: {} }));
const any = () => true;

test('the same seed draws the same settings, another one others', () => {
  expect(drawSettings(cars, 4, 6, any)).toEqual(drawSettings(cars, 4, 6, any));
  expect(drawSettings(cars, 4, 6, any)).not.toEqual(drawSettings(cars, 5, 6, any));
});

test('cases in words take turns', () => {
  for (let seed = 0; seed < 30; seed += 1) {
    const boxes = drawSettings(cars, seed, 6, any).map(({ box }) => box);
    expect(boxes.filter((box) => box === 'second')).toHaveLength(3);
  }
});

test('none comes twice, none is outside the ranges, and none that was refused comes', () => {
  const cool = drawSettings(cars, 1, 50, ({ hot }) => Number(hot) < 100);
  expect(new Set(cool.map((setting) => idOf(cars, setting))).size).toBe(8);
  expect(cool).toHaveLength(8);
  expect(cool.every(({ hot }) => Number(hot) >= 80 && Number(hot) < 100)).toBe(true);
});

test('a setting in short is read back, and nonsense is not', () => {
  for (const setting of drawSettings(cars, 2, 6, any)) {
    expect(settingOf(cars, idOf(cars, setting))).toEqual(setting);
  }
  for (const id of ['', 'first', 'third,80', 'first,81', 'first,80,1']) {
    expect(settingOf(cars, id)).toBeUndefined();
  }
});

test('a number is found by its full name, and no other', () => {
  const setting = { drive: 500, boost: 1.4 };
  const name = variationOf('reverse-boost', setting)?.numbers['reverse'] ?? '';
  expect(name).toBe('reverse-boost/500,1.4/reverse');
  // By hand: 500 kPa times 1.4.
  expect(variationNumber(name)?.value).toBeCloseTo(700, 9);
  expect(variationNumber('reverse-boost/500,9/reverse')).toBeUndefined();
  expect(variationNumber('nothing/500/reverse')).toBeUndefined();
  expect(() => variationOf('nothing', setting)).toThrow(/There is no family "nothing"/u);
});
