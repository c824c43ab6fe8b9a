/** The fluid in the pan and how much of it stands above the pick-up. */
export interface Sump {
  /** All the fluid in the transmission, cold [m3]. */
  readonly fill: number;
  /** What stands above the pick-up cold and at rest [m3]. */
  readonly spare: number;
  /** What each rpm pulls down at the pick-up [m3/rpm]. */
  readonly pullDown: number;
}

/** Air drawn for each cubic metre missing beyond the margin [1/m3]. */
export const AIR_PER_MISSING = 300;
/** Most air that a pump draws. */
export const MOST_AIR = 0.9;

/**
 * What stands above the pick-up while nothing is missing.
 *
 * Equation: margin = max(0, spare + fill (rho20 / rho - 1) - pullDown n). The fluid swells as it warms; speed pulls the level
 * down at the pick-up.
 *
 * @param sump fill and spare [m3], pullDown [m3/rpm]
 * @param at engine speed [rpm] and swell, density at 20 degC over density now [-]
 * @returns fluid above the pick-up [m3]
 * Range: zero and above: a fill that is right keeps the pick-up covered.
 * Leaves out: what drains back while the engine stands.
 * Source: swelling by API MPMS 11.1; figures invented.
 * @example
 * marginOverPickUp({ fill: 8e-3, spare: 5e-4, pullDown: 2.5e-7 }, { engineRpm: 1000, swell: 1.0625 }) // 0.00075
 */
export function marginOverPickUp(
  sump: Sump,
  at: { readonly engineRpm: number; readonly swell: number },
): number {
  return Math.max(0, sump.spare + sump.fill * (at.swell - 1) - sump.pullDown * at.engineRpm);
}

/**
 * Part of what the pump draws that is air, from a level that is low.
 *
 * Equation: air = clamp(300 (missing - margin), 0, 0.9), margin as marginOverPickUp has it, so the same missing litre matters
 * more cold and with speed.
 *
 * @param sump fill and spare [m3], pullDown [m3/rpm]
 * @param missing fluid missing from the fill [m3]
 * @param at engine speed [rpm] and swell, density at 20 degC over density now [-]
 * @returns share of air [-]
 * Range: 0 to 0.9; none at all when nothing is missing.
 * Leaves out: bends and hills, and air that stays in the fluid after it was drawn.
 * Source: swelling by API MPMS 11.1; that low is bad cold and with speed is common practice, no source; figures invented.
 * @example
 * airDrawn({ fill: 8e-3, spare: 5e-4, pullDown: 2.5e-7 }, 1.5e-3, { engineRpm: 1000, swell: 1 }) // 0.375
 */
export function airDrawn(
  sump: Sump,
  missing: number,
  at: { readonly engineRpm: number; readonly swell: number },
): number {
  if (missing <= 0) return 0;
  return Math.min(MOST_AIR, Math.max(0, AIR_PER_MISSING * (missing - marginOverPickUp(sump, at))));
}
