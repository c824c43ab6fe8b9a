import { expect, test } from 'vitest';
import { printBoth } from '../../src/quantity/print-both.ts';

test('an amount reads in both systems, and tells what it was before rounding', () => {
  expect(printBoth(413.6854372, 'pressure')).toEqual({
    si: '414\u00a0kPa',
    us: '60\u00a0psi',
    amount: 'pressure 413.685437',
  });
  expect(printBoth(1.5, 'seconds')).toEqual({
    si: '1.50\u00a0s',
    us: '1.50\u00a0s',
    amount: 'seconds 1.5',
  });
});
