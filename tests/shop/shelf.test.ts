import { describe, expect, it } from 'vitest';
import { foundOnShelf, keepFor, lyingOnShelf, usedMeanwhile } from '../../src/shop/shelf.ts';
import shop from '../truth/shop.json' with { type: 'json' };

/**
 * Cumulative Poisson table, four decimals, as textbooks print it (read in a stored copy): P(X <= 0), P(X <= 1) ... for each mean.
 * Kept S, found P(X <= S - 1).
 */
const TABLE: Readonly<Record<string, readonly number[]>> = {
  '0.5': [0.6065, 0.9098, 0.9856, 0.9982, 0.9998],
  '1': [0.3679, 0.7358, 0.9197, 0.981, 0.9963, 0.9994],
  '2': [0.1353, 0.406, 0.6767, 0.8571, 0.9473, 0.9834, 0.9955],
  '3.5': [0.0302, 0.1359, 0.3208, 0.5366, 0.7254, 0.8576, 0.9347, 0.9733],
  '5': [0.0067, 0.0404, 0.1247, 0.265, 0.4405, 0.616, 0.7622, 0.8666, 0.9319, 0.9682],
};

describe.each(Object.entries(TABLE))('%s used meanwhile', (mean, column) => {
  it('finds what the printed table says', () => {
    column.forEach((printed, used) =>
      expect(Math.abs(foundOnShelf(used + 1, Number(mean)) - printed)).toBeLessThan(0.6e-4),
    );
  });
  it('keeps the first number of the table that is enough', () => {
    for (const share of [0.5, 0.9, 0.95]) {
      const first = column.findIndex((printed) => printed >= share);
      if (first >= 0) expect(keepFor(share, Number(mean))).toBe(first + 1);
    }
  });
});

// Forty thousand years of a shelf, played in Python with waits that vary about their mean.
it.each(shop.shelves)('$keep kept, $aYear a year, $days days: as played', (asked) => {
  const mean = usedMeanwhile(asked.aYear, asked.days);
  expect(Math.abs(foundOnShelf(asked.keep, mean) - asked.found)).toBeLessThan(0.006);
  expect(Math.abs(lyingOnShelf(asked.keep, mean) - asked.lying)).toBeLessThan(0.015);
});

it('never lies more than is kept, and less the more are used', () => {
  for (const keep of [0, 1, 4]) {
    expect(lyingOnShelf(keep, 0)).toBe(keep);
    expect(lyingOnShelf(keep, 2)).toBeLessThanOrEqual(keep);
    expect(lyingOnShelf(keep, 3)).toBeLessThanOrEqual(lyingOnShelf(keep, 2));
  }
});

it('finds nothing where nothing is kept', () => {
  expect(foundOnShelf(0, 1)).toBe(0);
  expect(keepFor(0, 1)).toBe(0);
});

it('refuses what cannot be, with a sentence', () => {
  expect(() => usedMeanwhile(-1, 3)).toThrow(/cannot be below 0/u);
  expect(() => keepFor(1, 1)).toThrow(/always enough/u);
  expect(() => foundOnShelf(2, Number.NaN)).toThrow(/cannot be below 0/u);
});
