/** What a posterior says to a shop, on posteriors made by hand. */
import { describe, expect, test } from 'vitest';
import { areTwo, chiSquareTail, findingsOf, fitOf } from '../../src/diagnosis/findings.ts';
import { posteriorOf, prior, type Posterior, type Weighed } from '../../src/diagnosis/posterior.ts';
import { NAMES } from '../../src/diagnosis/hypotheses.ts';
import { made } from './made.ts';

const healthy = made({ name: 'healthy' });
/** Cells with the shares that are given, each with the distance of its readings. */
function posterior(
  given: readonly (readonly [hypothesis: typeof healthy, share: number, off?: number])[],
  numbers = 0,
): Posterior {
  const cells = prior(given.map(([one]) => one));
  const shares = Float64Array.from(cells, (_, n) => given[n]?.[1] ?? 0);
  const off = cells.map((cell, n): Weighed => ({ ...cell, off: given[n]?.[2] ?? 0 }));
  return { ...posteriorOf(cells, []), cells: off, shares, numbers };
}

describe('chi-square law', () => {
  // NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.4: upper critical values, printed to three places.
  test.each([
    [2.706, 1, 0.1],
    [6.635, 1, 0.01],
    [5.991, 2, 0.05],
    [9.21, 2, 0.01],
    [7.815, 3, 0.05],
    [11.345, 3, 0.01],
    [12.592, 6, 0.05],
    [14.067, 7, 0.05],
    [21.666, 9, 0.01],
    [24.725, 11, 0.01],
    [37.566, 20, 0.01],
  ])('%d at %i degrees leaves %d above it', (x, n, above) => {
    expect(Math.abs(chiSquareTail(x, n) - above)).toBeLessThan(1e-4);
  });
  test('all of it lies above zero', () => {
    for (const n of [1, 2, 3, 8, 21]) expect(chiSquareTail(0, n)).toBeCloseTo(1, 6);
  });
});

describe('findings', () => {
  const rings = (circuit: 'forward' | 'reverse' | 'high', severity: number) =>
    made({ name: 'sealingRings', circuit }, {}, severity);
  const found = findingsOf(
    posterior([
      [healthy, 0.1],
      [rings('forward', 0.2), 0.04],
      [rings('forward', 0.4), 0.24],
      [rings('reverse', 0.6), 0.3],
      [rings('high', 0.8), 0.02],
      [made({ name: 'filter' }, {}, 0.6), 0.005],
      [made({ name: 'filter' }, {}, 0.8), 0.005],
      [made({ name: 'turbineSensor' }), 0.29],
    ]),
  );
  const of = (name: string) => found.find(({ fault }) => fault === name);

  test('every name, the likeliest first', () => {
    expect(found).toHaveLength(NAMES.length);
    expect(found.slice(0, 4).map(({ fault }) => fault)).toEqual([
      'sealingRings',
      'turbineSensor',
      'healthy',
      'filter',
    ]);
    expect(of('sealingRings')?.probability).toBeCloseTo(0.6, 12);
    expect(of('pumpWear')?.probability).toBe(0);
  });
  test('circuits where a fault sits in one, and nowhere else', () => {
    const { circuits } = of('sealingRings') ?? {};
    expect(circuits?.forward).toBeCloseTo(0.28, 12);
    expect(circuits?.reverse).toBeCloseTo(0.3, 12);
    expect(circuits?.high).toBeCloseTo(0.02, 12);
    for (const name of ['healthy', 'filter', 'transferSeal', 'turbineSensor', 'unlisted'])
      expect(of(name)).not.toHaveProperty('circuits');
    expect(of('openPort')?.circuits).toEqual({ forward: 0, reverse: 0, high: 0 });
  });
  test('severity by its 5, 50 and 95 % points, where there is one and the name counts', () => {
    // Of 0.6: at 0.2 lie 0.067 of it, up to 0.4 they are 0.467, up to 0.6 they are 0.967.
    expect(of('sealingRings')?.severity).toEqual([0.2, 0.6, 0.6]);
    for (const name of ['healthy', 'filter', 'turbineSensor', 'pumpWear'])
      expect(of(name)).not.toHaveProperty('severity');
  });
  test('a name that just counts has its severity', () => {
    const [one] = findingsOf(
      posterior([
        [healthy, 0],
        [made({ name: 'filter' }, {}, 0.6), 0.011],
      ]),
    );
    expect(one).toMatchObject({ fault: 'filter', severity: [0.6, 0.6, 0.6] });
  });
});

describe('fit', () => {
  const pump = made({ name: 'pumpWear' }, {}, 0.5);
  const fit = (off: number, numbers: number, two?: Parameters<typeof fitOf>[1]) =>
    fitOf(
      posterior(
        [
          [healthy, 0.25, 4 * off],
          [pump, 0.75, 0],
        ],
        numbers,
      ),
      two,
    );
  const odds = (one: number) => ({ odds: one, pairs: [] }) as never as Parameters<typeof fitOf>[1];

  test('no number, no fit', () => {
    expect(fit(3, 0)).toEqual({ d2: 0, readings: 0, p: null });
  });
  test('the distance is the mean over what is listed', () => {
    expect(fit(3, 2)).toMatchObject({ d2: 3, readings: 2 });
    // What is not listed keeps out: two cells of the list with a half between them.
    const half = posterior(
      [
        [healthy, 0.1, 10],
        [pump, 0.4, 5],
      ],
      2,
    );
    half.shares[2] = 0.5;
    expect(fitOf(half).d2).toBeCloseTo((0.1 * 10 + 0.4 * 5) / 0.5, 12);
  });
  test('with everything on a cause that is not listed there is no distance', () => {
    const none = posterior([[healthy, 0, 10]], 6);
    none.shares[1] = 1;
    expect(fitOf(none)).toMatchObject({ d2: 0, p: 1, singleFaultFits: true });
  });
  test.each([
    [3, 1000, undefined],
    // The chi-square law leaves 0.02 above 11.668 at four degrees (from memory, checked by its sum below).
    [4, 11.6, true],
    [4, 11.75, false],
    [9, 19.6, true],
    [9, 19.75, false],
    [10, 13.9, true],
    [10, 14.1, false],
    [19, 26.5, true],
    [19, 26.7, false],
  ])('%i readings at a distance of %d: one fault fits, %s', (numbers, d2, fits) => {
    expect(fit(d2, numbers).singleFaultFits).toBe(fits);
    if (numbers === 4) {
      // exp(-x/2) (1 + x/2), the closed form at four degrees.
      expect(fit(d2, numbers).p).toBeCloseTo(Math.exp(-d2 / 2) * (1 + d2 / 2), 9);
    }
  });
  test('of twenty and more nothing is said without the pairs; with them by 2 a reading or by their odds', () => {
    expect(fit(1000, 20)).not.toHaveProperty('singleFaultFits');
    expect(fit(39, 20, odds(1)).singleFaultFits).toBe(true);
    expect(fit(41, 20, odds(1)).singleFaultFits).toBe(false);
    expect(fit(10, 20, odds(8)).singleFaultFits).toBe(true);
    expect(fit(10, 20, odds(8.1)).singleFaultFits).toBe(false);
    expect([areTwo({ odds: 8 }), areTwo({ odds: 9 })]).toEqual([false, true]);
  });
});
