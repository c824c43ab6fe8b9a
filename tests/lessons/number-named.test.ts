import { expect, test } from 'vitest';
import { numberNamed } from '../../src/lessons/number-named.ts';

test('a number is found by its name', () => {
  expect(numberNamed('pressure-400')).toMatchObject({ value: 400, quantity: 'pressure' });
});

test('a name that is not there is told, with the one that was probably meant', () => {
  expect(() => numberNamed('presure-400')).toThrow(
    'There is no number "presure-400". Did you mean "pressure-400"',
  );
  expect(() => numberNamed('toString')).toThrow('There is no number "toString".');
});
