import { requireInRange } from '../error.ts';

/** A flat gap: as wide as the crack or the circumference is long, as high as a feeler gauge, as long as the land. */
export interface Gap {
  readonly width: number;
  readonly height: number;
  readonly length: number;
}

/** What a gap does under a pressure difference. */
export interface GapFlow {
  readonly flow: number;
  readonly reynolds: number;
  readonly viscousShare: number;
  readonly laminarLawValid: boolean;
}

/** Share of the dynamic pressure lost at entry and exit of a short gap; from memory, about 1.5. */
export const GAP_END_LOSS = 1.5;
/** Above this Reynolds number the laminar law is outside its range. */
export const GAP_REYNOLDS_LIMIT = 2000;

/** Limits for a gap a person types. */
export const GAP_LIMITS = {
  width: { name: 'Gap width', unit: 'm', min: 0, max: 10 },
  height: { name: 'Gap height', unit: 'm', min: 0, max: 0.01 },
  length: { name: 'Gap length', unit: 'm', min: 1e-5, max: 10 },
  pressure: { name: 'Pressure difference', unit: 'Pa', min: -1e9, max: 1e9 },
  density: { name: 'Density', unit: 'kg/m3', min: 0, max: 20000 },
  dynamic: { name: 'Dynamic viscosity', unit: 'Pa s', min: 1e-30, max: 1e6 },
} as const;

/**
 * Flow through a gap and nothing else: the inner loop of every circuit solve. Odd in dp, no checks.
 *
 * Equation: the root of dp = R Q + K rho/2 (Q / (w h))^2; see gapFlow.
 *
 * @param gap width, height, length [m]
 * @param dp pressure difference [Pa]
 * @param density [kg/m3]
 * @param dynamic dynamic viscosity [Pa s]
 * @returns flow [m3/s]
 * Range: as gapFlow; no width or no height gives zero.
 * Source: as gapFlow.
 * @example
 * gapFlowRate({ width: 0.014, height: 1e-4, length: 0.003 }, 4e5, 790, 0.005) // 2.0870e-5
 */
export function gapFlowRate(gap: Gap, dp: number, density: number, dynamic: number): number {
  const { width, height, length } = gap;
  if (height <= 0 || width <= 0 || dp === 0) return 0;
  const area = width * height;
  const viscous = (12 * dynamic * length) / (area * height * height);
  const ends = (GAP_END_LOSS * density) / (2 * area * area);
  const size = Math.abs(dp);
  // The stable root of the quadratic: no difference of near-equal numbers when the gap is thin.
  const flow = (2 * size) / (viscous + Math.sqrt(viscous * viscous + 4 * ends * size));
  return dp < 0 ? -flow : flow;
}

/**
 * Flow through a gap: laminar slot in series with its entry and exit loss.
 *
 * Equation: dp = R Q + K rho/2 (Q / (w h))^2, R = 12 mu L / (w h^3), K = 1.5; Re = 2 rho Q / (w mu).
 *
 * @param gap width, height, length [m]
 * @param dp pressure difference [Pa]
 * @param state density [kg/m3] and dynamic viscosity [Pa s]
 * @returns flow [m3/s], reynolds [-], viscousShare of dp [-], laminarLawValid
 * Range: Re up to 2000; above it laminarLawValid is false and the flow is an upper estimate.
 * @throws EngineError on a negative or absurd size.
 * Leaves out: eccentricity and rough edges (a torn lip leaks more), heating of the fluid within the gap.
 * Source: slot law, M. G. Rabie, Fluid Power Engineering (2009), eq. 2.19; K from memory, both limits are tested.
 * @example
 * gapFlow({ width: 0.014, height: 1e-4, length: 0.003 }, 4e5, { density: 790, dynamic: 0.005 }).viscousShare // 0.67083
 */
export function gapFlow(
  gap: Gap,
  dp: number,
  state: { readonly density: number; readonly dynamic: number },
): GapFlow {
  requireInRange(gap.width, GAP_LIMITS.width);
  requireInRange(gap.height, GAP_LIMITS.height);
  requireInRange(gap.length, GAP_LIMITS.length);
  requireInRange(dp, GAP_LIMITS.pressure);
  requireInRange(state.density, GAP_LIMITS.density);
  requireInRange(state.dynamic, GAP_LIMITS.dynamic);
  const flow = gapFlowRate(gap, dp, state.density, state.dynamic);
  const { width, height, length } = gap;
  if (width === 0 || height === 0) {
    return { flow: 0, reynolds: 0, viscousShare: 1, laminarLawValid: true };
  }
  const reynolds = ((2 * state.density) / state.dynamic) * (Math.abs(flow) / width);
  // R Q / dp with Q written out: 4 K rho/2 dp / (w h R)^2 keeps its size where R alone overflows, and the share cannot pass 1.
  const slot = 12 * state.dynamic * length;
  const inertia = (2 * GAP_END_LOSS * state.density * height ** 4 * Math.abs(dp)) / (slot * slot);
  const viscousShare = 2 / (1 + Math.sqrt(1 + inertia));
  return { flow, reynolds, viscousShare, laminarLawValid: reynolds <= GAP_REYNOLDS_LIMIT };
}
