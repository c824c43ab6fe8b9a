/** What passes where there is nothing to pass through, nothing to drive it, or so much that it chokes. */
import { describe, expect, it } from 'vitest';
import {
  AIR_GAS_CONSTANT,
  AIR_HEAT_RATIO,
  airGapFlow,
  airHoleFlow,
  ATMOSPHERE_PA,
  BENCH_AIR,
  HOLE_DISCHARGE,
  holeFlow,
} from '../../../src/engine/index.ts';

const gap = { width: 0.014, height: 2e-5, length: 0.003 };
const air = (supply: number) => ({ supply, ambient: ATMOSPHERE_PA, tempK: 293.15 });

describe('air', () => {
  it('passes neither where there is no room nor where the supply is no higher than the room it goes to', () => {
    for (const [height, width] of [
      [0, 0.014],
      [-2e-5, 0.014],
      [2e-5, 0],
      [2e-5, -0.014],
    ] as const)
      expect(airGapFlow({ ...gap, height, width }, BENCH_AIR)).toBe(0);
    for (const supply of [ATMOSPHERE_PA, ATMOSPHERE_PA - 1, 0]) {
      expect(airGapFlow(gap, air(supply))).toBe(0);
      expect(airHoleFlow(1e-6, air(supply))).toBe(0);
    }
    expect(airHoleFlow(0, BENCH_AIR)).toBe(0);
    expect(airHoleFlow(-1e-6, BENCH_AIR)).toBe(0);
  });
  // Critical ratio of air 0.52828 (NACA Report 1135, from memory): beyond it a hole passes in proportion to its supply.
  it('chokes at a ratio of 0.52828, and then goes with the supply', () => {
    const choked = ATMOSPHERE_PA / 0.52828;
    const flow = (supply: number) => airHoleFlow(1e-6, air(supply)) / supply;
    expect(flow(2 * choked)).toBeCloseTo(flow(choked * 1.001), 15);
    expect(flow(choked * 0.9)).toBeLessThan(flow(choked) * 0.999);
    const g = AIR_HEAT_RATIO;
    const law =
      Math.sqrt(g / (AIR_GAS_CONSTANT * 293.15)) * (2 / (g + 1)) ** ((g + 1) / (2 * (g - 1)));
    expect(flow(2 * choked)).toBeCloseTo(HOLE_DISCHARGE * 1e-6 * law, 12);
  });
  it('through a gap goes with the difference of the squares, with the third power of the height, and never over the choked flow', () => {
    const thin = { ...gap, height: 5e-6 };
    const [low, high] = [air(2 * ATMOSPHERE_PA), air(3 * ATMOSPHERE_PA)];
    // 4 - 1 and 9 - 1.
    expect(airGapFlow(thin, high) / airGapFlow(thin, low)).toBeCloseTo(8 / 3, 9);
    expect(airGapFlow({ ...thin, height: 1e-5 }, low) / airGapFlow(thin, low)).toBeCloseTo(8, 9);
    expect(airGapFlow({ ...thin, length: 0.006 }, low) / airGapFlow(thin, low)).toBeCloseTo(0.5, 9);
    const wide = { ...gap, height: 1e-3 };
    expect(airGapFlow(wide, high)).toBe(airHoleFlow(0.014 * 1e-3, high));
  });
});

describe('fluid through a hole', () => {
  it('passes nothing without a hole or a difference, and as much backward as forward', () => {
    expect(holeFlow(0, 1e5, 850, 1e-5)).toBe(0);
    expect(holeFlow(-1e-6, 1e5, 850, 1e-5)).toBe(0);
    expect(holeFlow(1e-6, 0, 850, 1e-5)).toBe(0);
    expect(holeFlow(1e-6, -1e5, 850, 1e-5)).toBe(-holeFlow(1e-6, 1e5, 850, 1e-5));
  });
  it('in cold fluid starts laminar: half the difference, half the flow', () => {
    const flow = (dp: number) => holeFlow(1e-6, dp, 850, 1e-3);
    expect(flow(2) / flow(1)).toBeCloseTo(2, 4);
    // And far on by the root.
    expect(holeFlow(1e-6, 4e5, 850, 1e-6) / holeFlow(1e-6, 1e5, 850, 1e-6)).toBeCloseTo(2, 3);
  });
});
