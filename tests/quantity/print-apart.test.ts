import { describe, expect, it } from 'vitest';
import { formatApart } from '../../src/quantity/print-apart.ts';
import { length, pressure } from '../../src/quantity/quantities.ts';

describe('two values that a sentence sets against each other', () => {
  it('are told apart by as many decimals as it takes', () => {
    expect(formatApart(323.1, 400, pressure, 'si')).toEqual(['323\u00a0kPa', '400\u00a0kPa']);
    expect(formatApart(323.1, 323.4, pressure, 'si')).toEqual(['323.1\u00a0kPa', '323.4\u00a0kPa']);
    expect(formatApart(0.251, 0.249, length, 'us')).toEqual([
      '9.9\u00a0thousandths',
      '9.8\u00a0thousandths',
    ]);
  });
  it('and print alike where they are alike', () => {
    expect(formatApart(323.1, 323.1, pressure, 'us')).toEqual(['47\u00a0psi', '47\u00a0psi']);
  });
});
