// Counted by hand. That no shaft stops and comes back in a few hundredths of a second: common practice, no source.
import { describe, expect, it } from 'vitest';
import { dropouts } from '../../src/log/dropouts.ts';

const rows = (perSecond: number, ...speeds: readonly number[]) =>
  dropouts(
    Float64Array.from(speeds, (_, row) => row / perSecond),
    Float64Array.from(speeds),
  );

describe('dropouts', () => {
  it('are one row of a slow log', () => {
    expect(rows(5, 700, 700, 0, 700, 700)).toEqual([2]);
  });
  it('are several rows of a fast log that are over as quickly', () => {
    // A plug that opens for 0.06 s, read every 0.02 s.
    expect(rows(50, 700, 700, 0, 0, 0, 690, 700, 0, 700)).toEqual([2, 3, 4, 7]);
  });
  it('are no stop that lasts', () => {
    // A third of a second at rest: Drive and back to Neutral.
    expect(rows(10, 700, 0, 0, 0, 700)).toEqual([]);
    expect(rows(50, 700, 0, 0, 0, 0, 0)).toEqual([]);
  });
  it('are no shaft that slows, or comes back slowly', () => {
    expect(rows(50, 700, 150, 0, 0, 700)).toEqual([]);
    expect(rows(50, 700, 0, 0, 150, 700)).toEqual([]);
  });
  it('are not where a reading is missing, or the rows are far apart', () => {
    expect(rows(50, 700, 0, Number.NaN, 700)).toEqual([]);
    expect(rows(2, 700, 0, 700)).toEqual([]);
  });
  it('are nothing in a log of none or one', () => {
    expect([rows(5), rows(5, 700), rows(5, 0, 0)]).toEqual([[], [], []]);
  });
});
