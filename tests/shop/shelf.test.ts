import { describe, expect, it } from 'vitest';
import {
  foundOnShelf,
  keepFor,
  lyingOnShelf,
  usedExactly,
  usedMeanwhile,
} from '../../src/shop/shelf.ts';
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

/**
 * A worked example of a shelf where one is ordered for each one sold: W. J. Hopp and M. L. Spearman, Factory Physics, section
 * 2.4.2 (a dealer sells ten refrigerators a month and waits a month). The figures are those that N. van Foreest prints of it,
 * nicky.vanforeest.com/inventorySystems/baseStock/baseStock.html, read in a stored copy. At their reorder point r one is on the
 * way whenever r are left, so r + 1 are kept; g(i) is the chance of i sold meanwhile, G(r) the share that finds one.
 */
describe('a dealer who sells ten a month and waits a month', () => {
  const mean = usedMeanwhile(120, 365 / 12);
  it('sells ten meanwhile', () => expect(mean).toBeCloseTo(10, 12));
  it.each([
    [4, 0.018917, 0.029253],
    [5, 0.037833, 0.067086],
    [6, 0.063055, 0.130141],
    [7, 0.090079, 0.220221],
    [8, 0.112599, 0.33282],
    [9, 0.12511, 0.45793],
    [10, 0.12511, 0.58304],
    [11, 0.113736, 0.696776],
    [12, 0.09478, 0.791556],
    [13, 0.072908, 0.864464],
    [14, 0.052077, 0.916542],
    [15, 0.034718, 0.95126],
    [16, 0.021699, 0.972958],
  ])('r = %i: g %f, G %f', (r, g, G) => {
    expect(Math.abs(usedExactly(mean, r) - g)).toBeLessThan(0.6e-6);
    expect(Math.abs(foundOnShelf(r + 1, mean) - G)).toBeLessThan(0.6e-6);
  });
  it('serves nine in ten from r = 14 on, which is 0.916541527065 of them', () => {
    expect(keepFor(0.9, mean)).toBe(15);
    expect(foundOnShelf(15, mean)).toBeCloseTo(0.916541527065, 12);
  });
  // I(14) = r + 1 - mean + B(14) = 5.103 in the book, with B(14) = 0.103 on order for somebody who waits (from memory).
  it('has 5.103 standing there, on the average', () => {
    expect(lyingOnShelf(15, mean)).toBeCloseTo(5.103, 3);
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
