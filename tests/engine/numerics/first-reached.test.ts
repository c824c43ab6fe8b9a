/** Where a value is reached within a step of which the cubic is known: it is that of Hermite through both ends. */
import { describe, expect, it } from 'vitest';
import { firstReached } from '../../../src/engine/numerics/first-reached.ts';

const step = (y0: number, y1: number, f0: number, f1: number, t0 = 0, t1 = 1) => ({
  ...{ t0, t1, y0: Float64Array.of(y0), y1: Float64Array.of(y1) },
  ...{ f0: Float64Array.of(f0), f1: Float64Array.of(f1) },
});
const line = step(0, 1, 1, 1);
const reach = (one: ReturnType<typeof step>, level: number, until = one.t1, piece = 0.1) =>
  firstReached(one, until, piece, (y) => (y[0] ?? Number.NaN) - level, new Float64Array(1));

describe('on a straight line', () => {
  it.each([0.25, 0.5, 0.95, 1])('%d is reached there', (level) => {
    expect(reach(line, level)).toBeCloseTo(level, 9);
  });
  it('what is reached at the start is reached there, and so is what lies behind', () => {
    expect(reach(line, 0)).toBe(0);
    expect(reach(line, -1)).toBe(0);
    expect(reach(step(2, 3, 1, 1, 5, 6), 2)).toBe(5);
  });
  it('what comes after the end of the step, or of the search, is not reached', () => {
    expect(reach(line, 1.01)).toBeNull();
    expect(reach(line, 0.5, 0.4)).toBeNull();
    expect(reach(line, 0.4, 0.4)).toBeCloseTo(0.4, 9);
  });
  it('whatever the pieces, even one', () => {
    for (const piece of [0.01, 0.3, 1, 50]) expect(reach(line, 0.7, 1, piece)).toBeCloseTo(0.7, 9);
  });
});

describe('over a hump: up from 0 with a slope of 1 and back to 0, t - t squared, 0.25 at most', () => {
  const hump = step(0, 0, 1, -1);
  it('is seen although both ends lie under it, where it is reached first', () => {
    // t - t^2 = 0.16 at 0.2 and at 0.8.
    expect(reach(hump, 0.16)).toBeCloseTo(0.2, 9);
  });
  it('but not by one piece, and not above its top', () => {
    expect(reach(hump, 0.16, 1, 1)).toBeNull();
    expect(reach(hump, 0.26)).toBeNull();
  });
});
