import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findRoot } from '../../../src/engine/index.ts';
import { SEED, even } from '../arbitraries.ts';

const runs = { seed: SEED, numRuns: 1000 };

describe('root finder', () => {
  it('lands on the root of any cubic it brackets, within its bound', () => {
    fc.assert(
      fc.property(even(-1, 1), even(0, 3), (root, slope) => {
        const f = (x: number) => (x - root) * (1 + slope * (x - root) * (x - root));
        const found = findRoot(f, -2, 2.5);
        expect(found.converged).toBe(true);
        expect(Math.abs(found.root - root)).toBeLessThanOrEqual(1e-15);
        expect(found.iterations).toBeLessThanOrEqual(60);
      }),
      runs,
    );
  });
  it('says so when there is nothing between its ends', () => {
    expect(findRoot((x) => x * x + 1, -1, 2).converged).toBe(false);
  });
});
