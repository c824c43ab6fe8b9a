import { expect, test } from 'vitest';
import { chiSquareTail } from '../../src/diagnosis/findings.ts';
import { normalBelow } from '../../src/diagnosis/normal.ts';

// M. Abramowitz and I. Stegun, Handbook of Mathematical Functions, table 26.1 (from memory); the fit is good to 1.2e-7.
test.each([
  [0, 0.5],
  [1, 0.841344746],
  [1.96, 0.975002105],
  [3, 0.998650102],
  [-2, 0.022750132],
])('the normal law below %d', (x, published) => {
  expect(Math.abs(normalBelow(x) - published)).toBeLessThan(2e-7);
});

// NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.4: upper critical values of the chi-square law at 0.05, printed
// to three places, which is 1e-4 of the tail.
test.each([
  [3.841, 1],
  [9.488, 4],
  [11.07, 5],
  [18.307, 10],
  [31.41, 20],
  [32.671, 21],
])('a twentieth of the chi-square law lies above %d at %i degrees', (x, n) => {
  expect(Math.abs(chiSquareTail(x, n) - 0.05)).toBeLessThan(1e-4);
});
