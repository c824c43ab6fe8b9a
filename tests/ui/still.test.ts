import { describe, expect, it } from 'vitest';
import { sameProps } from '../../src/ui/still.ts';

describe('what counts as the same props', () => {
  it('compares by value, lists by their members', () => {
    expect(sameProps({ x: 1, lines: ['a', 'b'] }, { x: 1, lines: ['a', 'b'] })).toBe(true);
    expect(sameProps({ x: 1, lines: ['a', 'b'] }, { x: 1, lines: ['a', 'c'] })).toBe(false);
    expect(sameProps({ x: 1, lines: ['a'] }, { x: 1, lines: ['a', 'b'] })).toBe(false);
    expect(sameProps({ x: 1 }, { x: 2 })).toBe(false);
  });
  it('sees a prop that came or went', () => {
    expect(sameProps({ x: 1 }, { x: 1, y: undefined })).toBe(false);
    expect(sameProps({ x: 1, y: 2 }, { x: 1 })).toBe(false);
  });
  it('takes another object for another state, whatever is in it', () => {
    expect(sameProps({ q: { a: 1 } }, { q: { a: 1 } })).toBe(false);
  });
});
