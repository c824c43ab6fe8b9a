import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stepValue } from '../../src/ui/step-value.ts';
import { pickRows } from '../../src/ui/table-rows.ts';
import { QUIET_MS, waitBeforeSpeaking } from '../../src/ui/throttle-text.ts';

describe('stepping', () => {
  const grid = { min: -30, max: 140, step: 5 };
  it('goes to the next round number from anywhere', () => {
    expect(stepValue(20, 1, grid)).toBe(25);
    expect(stepValue(37.8, 1, grid)).toBe(40);
    expect(stepValue(37.8, -1, grid)).toBe(35);
    expect(stepValue(0.1 + 0.2, 1, { min: 0, max: 1, step: 0.1 })).toBe(0.4);
  });
  it('stops at the ends', () => {
    expect(stepValue(140, 1, grid)).toBe(140);
    expect(stepValue(-30, -1, grid)).toBe(-30);
    expect(stepValue(-28, -1, grid)).toBe(-30);
  });
  it('walks a whole grid without dust', () => {
    const crack = { min: 0, max: 0.6, step: 0.01 };
    let value = 0;
    for (let i = 1; i <= 60; i += 1) {
      value = stepValue(value, 1, crack);
      expect(value).toBe(i / 100);
    }
  });
});

it('a table shows first, last and an even choice between', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 5000 }),
      fc.integer({ min: 2, max: 60 }),
      (total, most) => {
        const rows = pickRows(total, most);
        expect(rows.length).toBeLessThanOrEqual(most);
        if (total > 0) {
          expect(rows[0]).toBe(0);
          expect(rows.at(-1)).toBe(total - 1);
        }
        expect([...new Set(rows)]).toEqual(rows);
      },
    ),
  );
});

it('speaks at most twice a second, at once after silence, and survives a clock set back', () => {
  expect(waitBeforeSpeaking(Number.NEGATIVE_INFINITY, 0)).toBe(0);
  expect(waitBeforeSpeaking(1000, 1000)).toBe(QUIET_MS);
  expect(waitBeforeSpeaking(1000, 1400)).toBe(100);
  expect(waitBeforeSpeaking(1000, 1500)).toBe(0);
  expect(waitBeforeSpeaking(1000, 3)).toBe(0);
  expect(1000 / QUIET_MS).toBeLessThanOrEqual(2);
});
