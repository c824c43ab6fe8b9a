import { describe, expect, it } from 'vitest';
import {
  GAP_END_LOSS,
  GAP_REYNOLDS_LIMIT,
  annulusFlow,
  annulusFlowExact,
  gapFlow,
  orificeFlow,
  radialFlow,
  slotFlow,
} from '../../src/engine/index.ts';
import { published } from './check.ts';

const FOX = 'Fox & McDonald, Introduction to Fluid Mechanics, example 8.1';
const NATARAJAN = 'Natarajan, Principles of Fluid Mechanics, example 7.1';
const piston = { diameter: 0.025, clearance: 5e-6, length: 0.015, dp: 19e6, dynamic: 0.018 };
const pistonGap = { width: Math.PI * 0.025, height: 5e-6, length: 0.015 };
// SG 0.92 as the book's Reynolds number implies.
const pistonOil = { density: 920, dynamic: 0.018 };
// A crack a metre wide: the book gives flow speed, not flow.
const wall = { width: 1, height: 0.15e-3, length: 1.5 };
const WALL_DP = 1000 * 9.81 * 4;
const wallSpeed = () => slotFlow({ ...wall, dp: WALL_DP, dynamic: 0.001 }) / wall.height;
const slit = { width: 0.05, height: 0.001, length: 0.15 };
const SLIT_DP = 2e5;
const slitFlow = () => slotFlow({ ...slit, dp: SLIT_DP, dynamic: 0.08 });
const ring = { width: 0.377, height: 25e-6, length: 2e-3 };

published('flow through narrow gaps', [
  {
    what: 'leak past a piston: 57.6 mm3/s',
    source: FOX,
    status: 'printed',
    got: () => annulusFlow(piston) * 1e9,
    expected: 57.6,
    within: { absolute: 0.05 },
    because: 'printed to one decimal',
  },
  {
    what: 'mean speed in that clearance: 0.147 m/s',
    source: FOX,
    status: 'printed',
    got: () => annulusFlow(piston) / (pistonGap.width * pistonGap.height),
    expected: 0.147,
    within: { absolute: 5e-4 },
    because: 'printed to three decimals',
  },
  {
    what: 'Reynolds number on the gap: 0.0375; ours is on twice the gap',
    source: FOX,
    status: 'printed',
    got: () => gapFlow(pistonGap, 19e6, pistonOil).reynolds / 2,
    expected: 0.0375,
    within: { absolute: 5e-5 },
    because: 'printed to three figures',
  },
  {
    what: 'the gap law with its end losses gives the same leak',
    source: FOX,
    status: 'printed',
    got: () => gapFlow(pistonGap, 19e6, pistonOil).flow * 1e9,
    expected: 57.6,
    within: { absolute: 0.05 },
    because: 'end losses are 15 Pa of 19 MPa here',
  },
  {
    what: 'seepage through a crack in a wall: 0.0491 m/s',
    source: NATARAJAN,
    status: 'printed',
    got: wallSpeed,
    expected: 0.0491,
    within: { absolute: 6e-5 },
    because: 'printed to three figures, and g = 9.81 gives 0.04905, which it rounds up',
  },
  {
    what: 'wall shear in that crack: 1.962 Pa, from the flow',
    source: NATARAJAN,
    status: 'printed',
    got: () => (6 * 0.001 * wallSpeed()) / wall.height,
    expected: 1.962,
    within: { absolute: 5e-4 },
    because: 'printed to three decimals',
  },
  {
    what: 'the gap law in that crack',
    source: NATARAJAN,
    status: 'printed',
    got: () =>
      gapFlow(wall, WALL_DP, { density: 1000, dynamic: 0.001 }).flow / (wall.width * wall.height),
    expected: 0.0491,
    within: { absolute: 6e-5 },
    because: 'end losses are 2 Pa of 39 kPa here',
  },
  {
    what: 'a 50 mm by 1 mm slit, 150 mm long, 0.08 Pa s, 2 bar',
    source:
      'textbook exercise on viscous flow between plates; slot law, Rabie, Fluid Power Engineering (2009), eq. 2.19',
    status: 'computed',
    got: slitFlow,
    expected: 6.9444e-5,
    within: { relative: 1e-5 },
    because: 'worked out to five figures',
  },
  {
    what: 'radial flow between discs, 1 mm, 15 kPa, ratio 6, 0.6 Pa s: 7.31e-6 m3/s',
    source: 'Massey, Mechanics of Fluids, example 6.2',
    status: 'printed',
    got: () => radialFlow({ height: 0.001, radiusRatio: 6, dp: 15e3, dynamic: 0.6 }),
    expected: 7.31e-6,
    within: { absolute: 5e-9 },
    because: 'printed to three figures',
  },
  {
    what: 'a piston that lies against its bore leaks 2.5 times a centred one',
    source: 'hydraulic clearance, factor 1 + 1.5 e^2; Rabie (2009) eq. 2.19',
    status: 'printed',
    got: () => annulusFlow({ ...piston, eccentricity: 1 }) / annulusFlow(piston),
    expected: 2.5,
    within: { absolute: 1e-12 },
    because: 'closed form',
  },
  {
    what: 'the exact annulus tends to the thin-slot form',
    source: 'exact annulus solution, texts on viscous flow; limit of a thin gap',
    status: 'computed',
    got: () =>
      annulusFlowExact({ outer: 0.01255, inner: 0.01245, length: 0.015, dp: 1e5, dynamic: 0.02 }) /
      annulusFlow({ diameter: 0.025, clearance: 1e-4, length: 0.015, dp: 1e5, dynamic: 0.02 }),
    expected: 1,
    within: { absolute: 1e-4 },
    because:
      'the next term is of the order (c/D)^2 = 1.6e-5; differences of fourth powers cost the rest',
  },
  {
    what: 'discs of nearly equal radii are a slot as wide as their circumference',
    source: 'Rabie (2009) eq. 2.24, thin-land form',
    status: 'printed',
    got: () =>
      radialFlow({ height: 1e-3, radiusRatio: 0.101 / 0.1, dp: 1e5, dynamic: 0.05 }) /
      slotFlow({ width: Math.PI * 0.201, height: 1e-3, length: 1e-3, dp: 1e5, dynamic: 0.05 }),
    expected: 1,
    within: { absolute: 1e-4 },
    because: 'the thin-land form differs by (1/12)(dr/r)^2 = 8e-6',
  },
  {
    what: 'gap law without inertia is the slot law',
    source: 'Rabie (2009) eq. 2.19; limit of the series law',
    status: 'computed',
    got: () => gapFlow(slit, SLIT_DP, { density: 1e-9, dynamic: 0.08 }).flow,
    expected: 6.9444444e-5,
    within: { relative: 1e-7 },
    because: 'closed form',
  },
  {
    what: 'gap law without viscosity is a hole with discharge 1/sqrt(1.5) = 0.8165',
    source: 'orifice equation, Rabie (2009) eq. 2.37; end loss 1.5 from memory',
    status: 'memory',
    got: () =>
      gapFlow(slit, SLIT_DP, { density: 850, dynamic: 1e-9 }).flow /
      orificeFlow({ discharge: 1, area: 5e-5, dp: SLIT_DP, density: 850 }),
    expected: 0.8164966,
    within: { relative: 1e-6 },
    because: 'closed form, given the end loss',
  },
]);

describe('the limit of the laminar law', () => {
  it('is set below the published transition of a slot, 1400 on the gap (Fox & McDonald, example 8.1; printed)', () => {
    expect(GAP_REYNOLDS_LIMIT / 2).toBeLessThanOrEqual(1400);
    expect(GAP_END_LOSS).toBeGreaterThanOrEqual(1);
  });
  it('is reported, not hidden', () => {
    const wide = { width: 0.014, height: 4e-4, length: 3e-3 };
    expect(gapFlow(wide, 1e6, { density: 800, dynamic: 0.004 }).laminarLawValid).toBe(false);
    expect(gapFlow(ring, 4e5, { density: 800, dynamic: 0.004 }).laminarLawValid).toBe(true);
  });
});
