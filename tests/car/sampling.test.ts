import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { chanceSeen, readingsEach, seenAs, spreadOf } from '../../src/car/sampling.ts';

test.each([
  // By hand.
  [20, 10, 2],
  [20, 2, 10],
  [100, 2, 50],
  [60, 6, 10],
  [20, 0, 0],
])('%i values a second over %i items are %i readings of each', (values, items, each) => {
  expect(readingsEach(values, items)).toBe(each);
});

describe('the chance that something short has a reading in it', () => {
  // Counted: rows at whole multiples of the step, the event begun at every hundredth of one.
  it.each([
    [0.05, 10, 0.5],
    [0.05, 20, 1],
    [0.05, 2, 0.1],
    [0.6, 2, 1],
    [0.03, 10, 0.3],
  ])('%f s at %i readings a second', (lasts, rate, byHand) => {
    const steps = 10_000;
    const seen = Array.from({ length: steps }, (_, i) => (i + 0.5) / steps / rate).filter(
      (begins) => Math.floor((begins + lasts) * rate) > Math.floor(begins * rate),
    );
    expect(Math.abs(seen.length / steps - byHand)).toBeLessThan(2e-4);
    expect(chanceSeen(lasts, rate)).toBeCloseTo(byHand, 9);
  });
});

describe('what readings make of a swing', () => {
  // C. E. Shannon, A Mathematical Theory of Communication (1948), theorem 13: values 1/(2W) apart tell all that holds no
  // frequency over W.
  it('is told as it is by more than two readings to each', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 50, noNaN: true }),
        fc.double({ min: 2.001, max: 40, noNaN: true }),
        (swings, readings) => {
          expect(seenAs(swings, readings * swings)).toBeCloseTo(swings, 9);
        },
      ),
    );
  });

  // With fewer it cannot be told from a slower one: the textbook identity sin(2πfk/r) = ±sin(2πf'k/r) at every reading k.
  it('cannot be told from a slower one by fewer', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 60 }),
        fc.integer({ min: 1, max: 60 }),
        (swings, rate) => {
          const slow = seenAs(swings, rate);
          expect(slow).toBeLessThanOrEqual(rate / 2);
          const read = (f: number) =>
            Array.from({ length: 50 }, (_, k) => Math.cos((2 * Math.PI * f * k) / rate));
          read(slow).forEach((value, k) => expect(value).toBeCloseTo(read(swings)[k] ?? NaN, 6));
        },
      ),
      { numRuns: 60 },
    );
  });

  it.each([
    // By hand: the distance to the nearest whole multiple of the rate.
    [10, 10, 0],
    [10, 15, 5],
    [10, 40 / 3, 10 / 3],
    [10, 50, 10],
  ])('%f swings at %f readings look like %f', (swings, rate, slow) => {
    expect(seenAs(swings, rate)).toBeCloseTo(slow, 9);
  });
});

// JCGM 100:2008 (GUM) 4.3.7, from memory: a quantity anywhere within ±a with even chances has the variance a²/3.
test('the spread of a moment in its step is that of a rectangular distribution', () => {
  for (const step of [0.02, 0.1, 0.5]) {
    const a = step / 2;
    expect(spreadOf(step) ** 2).toBeCloseTo(a ** 2 / 3, 12);
  }
});
