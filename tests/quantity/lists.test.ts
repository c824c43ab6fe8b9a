import { describe, expect, it } from 'vitest';
import { listOf, plural } from '../../src/quantity/lists.ts';

describe('lists and plurals', () => {
  it('read as people write them', () => {
    expect(listOf(['forward'])).toBe('forward');
    expect(listOf(['forward', 'reverse'])).toBe('forward and reverse');
    expect(listOf(['psi', 'kPa'], 'disjunction')).toBe('psi or kPa');
    expect(listOf(['a', 'b', 'c'], 'conjunction', 'es')).toBe('a, b y c');
  });
  it('take the form of the number', () => {
    const forms = { one: 'a minute', other: '# minutes' };
    expect([1, 0, 17.4].map((n) => plural(n, forms))).toEqual([
      'a minute',
      '0 minutes',
      '17 minutes',
    ]);
    expect(plural(2, { one: '# grieta', other: '# grietas' }, 'es')).toBe('2 grietas');
  });
});
