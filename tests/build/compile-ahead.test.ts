import { describe, expect, it } from 'vitest';
import { COMPILE_AHEAD, compileAhead } from '../../src/build/compile-ahead.ts';

const { applyToEnvironment, generateBundle } = compileAhead();

describe('the hint to compile ahead', () => {
  it('stands first in a large script, once, and in no small one', () => {
    const large = { type: 'chunk', code: 'a();'.repeat(1000) };
    const small = { type: 'chunk', code: 'a();' };
    const style = { type: 'asset' };
    generateBundle.handler(undefined, { large, small, style });
    expect(large.code.startsWith(`${COMPILE_AHEAD}a();`)).toBe(true);
    expect(large.code.split(COMPILE_AHEAD)).toHaveLength(2);
    expect(small.code).toBe('a();');
    expect(style).toEqual({ type: 'asset' });
  });

  it('is for browsers alone', () => {
    expect(applyToEnvironment({ name: 'client' })).toBe(true);
    expect(applyToEnvironment({ name: 'ssr' })).toBe(false);
  });
});
