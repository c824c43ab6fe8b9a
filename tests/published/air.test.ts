import { describe, expect, it } from 'vitest';
import {
  AIR_GAS_CONSTANT,
  ATMOSPHERE_PA,
  HOLE_DISCHARGE,
  airDynamicViscosity,
  airGapFlow,
  airHoleFlow,
  slotFlow,
} from '../../src/engine/index.ts';
import { published } from './check.ts';

const ATMOSPHERE = 'US Standard Atmosphere 1976, ';
const WHITE = 'White, Fluid Mechanics, ';
const AREA = 1e-6;
const bench = { supply: 4e5, ambient: 1e5, tempK: 293.15 };
const throughHole = (ratio: number): number =>
  airHoleFlow(AREA, { ...bench, ambient: ratio * bench.supply }) / HOLE_DISCHARGE;
const choked = () => throughHole(0.2);
const thin = { width: 0.014, height: 1e-5, length: 3e-3 };

published('air', [
  {
    what: 'dynamic viscosity at 288.15 K',
    source: `${ATMOSPHERE}sea-level value`,
    status: 'printed',
    got: () => airDynamicViscosity(288.15),
    expected: 1.7894e-5,
    within: { absolute: 5e-10 },
    because: 'printed to five figures',
  },
  {
    what: 'dynamic viscosity at 216.65 K, 11 km up',
    source: `${ATMOSPHERE}table at 11 km`,
    status: 'memory',
    got: () => airDynamicViscosity(216.65),
    expected: 1.4216e-5,
    within: { relative: 1e-4 },
    because: 'five figures from memory',
  },
  {
    what: 'density at sea level from the gas constant',
    source: `${ATMOSPHERE}sea-level value`,
    status: 'memory',
    got: () => ATMOSPHERE_PA / (AIR_GAS_CONSTANT * 288.15),
    expected: 1.225,
    within: { absolute: 5e-5 },
    because: 'printed to five figures, 1.2250 kg/m3',
  },
  {
    what: 'choked flow is 0.6847 p0 A / sqrt(R T0)',
    source: `${WHITE}eq. 9.46, k = 1.4`,
    status: 'memory',
    got: () => (choked() * Math.sqrt(AIR_GAS_CONSTANT * 293.15)) / (bench.supply * AREA),
    expected: 0.6847,
    within: { absolute: 5e-5 },
    because: 'printed to four figures',
  },
  {
    what: 'Mach 0.5, p/p0 = 0.8430: A/A* = 1.3398 times less than choked',
    source: `${WHITE}table B.1, isentropic flow`,
    status: 'memory',
    got: () => choked() / throughHole(0.843),
    expected: 1.3398,
    within: { relative: 5e-4 },
    because: 'p/p0 is printed to four figures',
  },
  {
    what: 'Mach 0.8, p/p0 = 0.6560: A/A* = 1.0382',
    source: `${WHITE}table B.1, isentropic flow`,
    status: 'memory',
    got: () => choked() / throughHole(0.656),
    expected: 1.0382,
    within: { relative: 5e-4 },
    because: 'p/p0 is printed to four figures',
  },
  {
    what: 'a thin gap at a small pressure difference is the incompressible slot at the mean density',
    source: 'slot law, Rabie (2009) eq. 2.19; limit of the isothermal law',
    status: 'computed',
    got: () => {
      const air = { supply: 101000, ambient: 100000, tempK: 293.15 };
      const density = 100500 / (AIR_GAS_CONSTANT * 293.15);
      const dynamic = airDynamicViscosity(293.15);
      return airGapFlow(thin, air) / (density * slotFlow({ ...thin, dp: 1000, dynamic }));
    },
    expected: 1,
    within: { relative: 1e-12 },
    because: 'p1^2 - p2^2 = 2 pm dp is an identity',
  },
]);

describe('choking (one-dimensional gas dynamics, White, Fluid Mechanics, ch. 9; critical ratio 0.5283 from memory)', () => {
  it('below the critical ratio a lower back pressure changes nothing, above it does', () => {
    expect(throughHole(0.5)).toBe(throughHole(0.1));
    expect(throughHole(0.5283) / throughHole(0.1)).toBeCloseTo(1, 7);
    expect(throughHole(0.6)).toBeLessThan(0.99 * choked());
  });
  it('a wide gap passes no more than the choked flow of its area', () => {
    const wide = { width: 0.014, height: 4e-4, length: 3e-3 };
    expect(airGapFlow(wide, bench)).toBe(airHoleFlow(0.014 * 4e-4, bench));
    expect(airGapFlow(thin, bench)).toBeLessThan(airHoleFlow(0.014 * 1e-5, bench));
  });
});
