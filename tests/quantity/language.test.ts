import { describe, expect, it } from 'vitest';
import { printNumber } from '../../src/quantity/language.ts';

describe('numbers', () => {
  it('have a real minus, and are grouped from ten thousand on', () => {
    expect(printNumber(-1.25, 1)).toBe('\u22121.3');
    expect(printNumber(9999, 0)).toBe('9999');
    expect(printNumber(1234567.25, 1)).toBe('1,234,567.3');
    expect(printNumber(-0.001, 1)).toBe('0.0');
    expect(printNumber(2.5, 2, 0)).toBe('2.5');
    expect(printNumber(Number.NaN, 1)).toBe('no value');
  });
});
