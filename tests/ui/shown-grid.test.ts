import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatNumber } from '../../src/quantity/print.ts';
import { length, pressure, speed, temperature } from '../../src/quantity/quantities.ts';
import { shownGrid } from '../../src/ui/shown-grid.ts';
import { stepValue } from '../../src/ui/step-value.ts';

const crack = { min: 0, max: 0.4, step: 0.01 };

/** Every metric value that pressing "more" from one end to the other gives. */
function walk(grid: ReturnType<typeof shownGrid>, from: number): readonly number[] {
  const values = [from];
  for (let i = 0; i < 5000; i += 1) {
    const last = values.at(-1) ?? from;
    const next = grid.metric(stepValue(grid.place(last), 1, grid));
    if (next === last) break;
    values.push(next);
  }
  return values;
}

describe('the stops of a control', () => {
  it('are those it was given where the reader reads metric or the unit is shared', () => {
    expect(shownGrid(crack, length, 'si')).toMatchObject(crack);
    expect(shownGrid({ min: 500, max: 3000, step: 50 }, speed, 'us')).toMatchObject({ step: 50 });
  });
  it('are thousandths for a crack, °F by twos for a degree, whole psi for a few kPa', () => {
    expect(shownGrid(crack, length, 'us')).toMatchObject({ min: 0, max: 16, step: 1 });
    expect(shownGrid({ min: -30, max: 140, step: 1 }, temperature, 'us')).toMatchObject({
      min: -22,
      max: 284,
      step: 2,
    });
    expect(shownGrid({ min: 0, max: 1200, step: 1 }, pressure, 'us').step).toBe(1);
  });
  it('give their exact metric value, and the control’s own limits at the ends', () => {
    const grid = shownGrid(crack, length, 'us');
    expect(grid.metric(10)).toBe(0.254);
    expect(grid.metric(0)).toBe(0);
    expect(grid.metric(16)).toBe(0.4);
  });
  it('walk from end to end, and no two neighbours print alike', () => {
    const controls = [
      [crack, length],
      [{ min: 0.02, max: 0.4, step: 0.01 }, length],
      [{ min: -30, max: 140, step: 1 }, temperature],
      [{ min: 100, max: 1000, step: 10 }, pressure],
      [{ min: 0, max: 1200, step: 1 }, pressure],
    ] as const;
    for (const [control, quantity] of controls) {
      const grid = shownGrid(control, quantity, 'us');
      const values = walk(grid, control.min);
      expect(values.at(-1)).toBe(control.max);
      const texts = values.map((value) => formatNumber(value, quantity, 'us'));
      expect(new Set(texts).size).toBe(texts.length);
    }
  });
  it('lead on from a value between two stops, in both directions', () => {
    const grid = shownGrid(crack, length, 'us');
    expect(grid.metric(stepValue(grid.place(0.16), 1, grid))).toBe(0.1778);
    expect(grid.metric(stepValue(grid.place(0.16), -1, grid))).toBe(0.1524);
  });
  it('never leave the control’s range', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.4, noNaN: true }),
        fc.constantFrom<1 | -1>(1, -1),
        (value, way) => {
          const grid = shownGrid(crack, length, 'us');
          const next = grid.metric(stepValue(grid.place(value), way, grid));
          expect(next).toBeGreaterThanOrEqual(0);
          expect(next).toBeLessThanOrEqual(0.4);
        },
      ),
    );
  });
});
