import { describe, expect, it } from 'vitest';
import {
  billsOver,
  comebackHours,
  comebacksAmong,
  extraHours,
  worthHours,
  type OpenPart,
} from '../../src/shop/comeback.ts';
import shop from '../truth/shop.json' with { type: 'json' };

const filter: OpenPart = {
  accessH: 6,
  extraH: 0.1,
  price: 10,
  hourRate: 100,
  beside: 0,
  left: 0.08,
  renewed: 0.02,
};

describe('one car, by hand', () => {
  it('is worth the drop in chance times what is done twice', () => {
    // (0.08 - 0.02) x 6 h, and with 400 of loaner and name at 100 an hour (0.08 - 0.02) x 10 h.
    expect(worthHours(filter)).toBeCloseTo(0.36, 12);
    expect(worthHours({ ...filter, beside: 400 })).toBeCloseTo(0.6, 12);
  });
  it('costs its labor and its price in hours', () => {
    expect(extraHours({ ...filter, extraH: 0.4, price: 45, hourRate: 90 })).toBeCloseTo(0.9, 12);
  });
  it('is worth less than nothing where renewing makes it worse', () => {
    expect(worthHours({ ...filter, left: 0.02, renewed: 0.05 })).toBeCloseTo(-0.18, 12);
  });
});

describe('twenty cars', () => {
  it('add up, by hand: 20 x 0.08 x 6, 20 x 0.2, 20 x 0.02 x 6', () => {
    expect(billsOver(filter, 20)).toEqual({
      left: expect.closeTo(9.6, 12) as number,
      work: expect.closeTo(4, 12) as number,
      comebacks: expect.closeTo(2.4, 12) as number,
    });
  });
  it('pays exactly where the extra work is worth more than it costs', () => {
    for (const price of [0, 10, 25, 26, 27, 60, 400]) {
      const part = { ...filter, price };
      const { left, work, comebacks } = billsOver(part, 20);
      expect(work + comebacks < left, String(price)).toBe(extraHours(part) < worthHours(part));
    }
  });
  it('has a chance of none that a pocket calculator gives: 0.92 to the 20th', () => {
    expect(comebacksAmong(20, 0.08, 0)).toBeCloseTo(0.92 ** 20, 12);
  });
  // Binomial table, n = 20, p = 0.05, cumulative, as textbooks print it: 0.3585, 0.7358, 0.9245 (from memory).
  it('agrees with a printed binomial table', () => {
    const p = [0, 1, 2].map((k) => comebacksAmong(20, 0.05, k));
    expect(p[0]).toBeCloseTo(0.3585, 4);
    expect((p[0] ?? 0) + (p[1] ?? 0)).toBeCloseTo(0.7358, 4);
    expect((p[0] ?? 0) + (p[1] ?? 0) + (p[2] ?? 0)).toBeCloseTo(0.9245, 4);
  });
  it('counts every batch once', () => {
    let sum = 0;
    for (let k = 0; k <= 20; k += 1) sum += comebacksAmong(20, 0.3, k);
    expect(sum).toBeCloseTo(1, 12);
  });
});

/**
 * A worked example of the same comparison: J. Heizer and B. Render, Operations Management, chapter 17, example 5 (preventive
 * against breakdown maintenance). In twenty months printers broke down 0, 1, 2 or 3 times a month in 2, 8, 6 and 4 of them; each
 * time costs $300. A contract of $150 a month leaves one breakdown a month. Data read in a stored copy (holooly.com); the
 * printed results, 1.6 a month, $480 against $450, from memory.
 */
it('agrees with a textbook on breakdowns and a contract', () => {
  const aMonth = [2, 8, 6, 4].reduce((sum, months, times) => sum + times * (months / 20), 0);
  expect(aMonth).toBeCloseTo(1.6, 12);
  // A chance is of one car, so a month is two halves of 0.8 and 0.5 breakdowns each. An hour at 1 makes hours money.
  const half: OpenPart = {
    accessH: 300,
    extraH: 0,
    price: 75,
    hourRate: 1,
    beside: 0,
    left: aMonth / 2,
    renewed: 0.5,
  };
  const { left, work, comebacks } = billsOver(half, 2);
  expect(left).toBeCloseTo(480, 9);
  expect(work + comebacks).toBeCloseTo(450, 9);
  expect(extraHours(half)).toBeLessThan(worthHours(half));
});

// 60 000 batches played by chance in Python: about 0.4 % on a mean, 0.2 of a hundred on a share.
describe.each(shop.jobs)('played by chance: $asked', ({ asked, ...played }) => {
  const part: OpenPart = {
    accessH: asked.access,
    extraH: asked.extra,
    price: asked.price,
    hourRate: asked.rate,
    beside: asked.beside,
    left: asked.left,
    renewed: asked.renewed,
  };
  it('comes to the same', () => {
    const { left, work, comebacks } = billsOver(part, 20);
    expect(Math.abs(left / played.left - 1)).toBeLessThan(0.012);
    expect(Math.abs((work + comebacks) / played.renewed - 1)).toBeLessThan(0.012);
    expect(comebacksAmong(20, part.left, 0)).toBeCloseTo(played.noneLeft, 2);
    expect(Math.abs(comebacksAmong(20, part.renewed, 0) - played.noneRenewed)).toBeLessThan(0.008);
  });
});

describe('what is no chance, and no price of an hour', () => {
  it.each([[{ left: 1.2 }], [{ renewed: -0.1 }], [{ left: Number.NaN }]])('%o', (wrong) => {
    expect(() => worthHours({ ...filter, ...wrong })).toThrow(/share from 0 to 1/u);
  });
  it('is refused with a sentence', () => {
    expect(() => comebackHours({ ...filter, hourRate: 0 })).toThrow(/more than 0/u);
  });
});
