import { scaleLinear, scaleLog } from 'd3-scale';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { linearTicks, logTicks, makeScale, tickDigits } from '../../src/charts/scale.ts';

const span = fc
  .tuple(
    fc.double({ min: -1e4, max: 1e4, noNaN: true }),
    fc.double({ min: 0.01, max: 1e5, noNaN: true }),
  )
  .map(([low, size]) => [low, low + size] as const);

describe('scales', () => {
  it('agree with d3-scale, an independent program', () => {
    fc.assert(
      fc.property(span, fc.double({ min: 0, max: 1, noNaN: true }), ([low, high], share) => {
        const value = low + share * (high - low);
        const rival = scaleLinear([low, high], [40, 320]);
        const ours = makeScale('linear', [low, high], [40, 320]);
        expect(ours(value)).toBeCloseTo(rival(value), 6);
        expect(ours.invert(ours(value))).toBeCloseTo(value, 4);
      }),
    );
    const rival = scaleLog([1, 2000], [300, 0]);
    const ours = makeScale('log', [1, 2000], [300, 0]);
    for (const value of [1, 3, 10, 47.5, 999, 2000])
      expect(ours(value)).toBeCloseTo(rival(value), 9);
    expect(ours.invert(ours(47.5))).toBeCloseTo(47.5, 9);
  });
  it('put zero on a log axis at its bottom edge rather than nowhere', () => {
    expect(makeScale('log', [1, 100], [300, 0])(0)).toBe(300);
  });
  it('refuse a range that is none, with both numbers', () => {
    expect(() => makeScale('linear', [5, 5], [0, 1])).toThrow('5 to 5');
    expect(() => makeScale('log', [0, 5], [0, 1])).toThrow('above zero');
  });
});

describe('ticks', () => {
  it('are four to six, inside, evenly spaced, for any range', () => {
    fc.assert(
      fc.property(span, ([low, high]) => {
        const ticks = linearTicks(low, high);
        expect(ticks.length).toBeGreaterThanOrEqual(4);
        expect(ticks.length).toBeLessThanOrEqual(6);
        const room = (high - low) * 1e-6;
        expect(ticks[0]).toBeGreaterThanOrEqual(low - room);
        expect(ticks.at(-1)).toBeLessThanOrEqual(high + room);
        const gaps = ticks.slice(1).map((tick, i) => tick - (ticks[i] ?? 0));
        for (const gap of gaps) expect(gap).toBeCloseTo(gaps[0] ?? 0, 3);
      }),
      { numRuns: 3000 },
    );
  });
  it('are round where people expect it', () => {
    expect(linearTicks(0, 1000)).toEqual([0, 200, 400, 600, 800, 1000]);
    expect(linearTicks(0, 0.5)).toEqual([0, 0.1, 0.2, 0.3, 0.4, 0.5]);
    expect(logTicks(1, 1000)).toEqual([1, 10, 100, 1000]);
  });
  it('on a log axis stay between four and six for any two to twelve decades', () => {
    for (let low = -3; low <= 3; low += 1) {
      for (let decades = 1; decades <= 12; decades += 1) {
        const ticks = logTicks(10 ** low, 10 ** (low + decades));
        expect([low, decades, ticks.length >= 4 && ticks.length <= 6]).toEqual([
          low,
          decades,
          true,
        ]);
      }
    }
  });
  it('need as many decimals as tell them apart', () => {
    expect(tickDigits([0, 0.1, 0.2])).toBe(1);
    expect(tickDigits([0, 2.5, 5])).toBe(1);
    expect(tickDigits([0, 20])).toBe(0);
  });
});
