import { line } from 'd3-shape';
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { linePath } from '../../src/charts/path.ts';

/** A lone point is left out of the comparison: d3 closes it into a dot, ours is a move and no line. */
const stretches = fc.array(
  fc.array(fc.double({ min: -500, max: 500, noNaN: true }), { minLength: 2, maxLength: 8 }),
  { minLength: 1, maxLength: 4 },
);

test('lines with gaps are what d3-shape draws of them, to a tenth', () => {
  fc.assert(
    fc.property(stretches, (parts) => {
      const y = parts.flatMap((part, i) => (i === 0 ? part : [null, ...part]));
      const x = y.map((_, i) => i * 3.7);
      const theirs = line<number | null>()
        .defined((value) => value !== null)
        .x((_, i) => x[i] ?? 0)
        .y((value) => value ?? 0)
        .digits(1)(y);
      const numbers = (path: string): (string | number)[] =>
        (path.match(/[ML]|-?[\d.]+(?:e-?\d+)?/g) ?? []).map((part) =>
          /[ML]/.test(part) ? part : Number(part) + 0,
        );
      const ours = linePath(
        x,
        y,
        (value) => value,
        (value) => value,
      );
      expect(numbers(ours)).toEqual(numbers(theirs ?? ''));
    }),
    { numRuns: 300, seed: 20_261_125 },
  );
});
