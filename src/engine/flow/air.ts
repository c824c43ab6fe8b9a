import { ATMOSPHERE_PA } from '../units.ts';
import type { Gap } from './gap.ts';
import { HOLE_DISCHARGE } from './hole.ts';

/** Specific gas constant of dry air [J/(kg K)]; US Standard Atmosphere 1976. */
export const AIR_GAS_CONSTANT = 287.0528;
/** Ratio of specific heats of air [-]. */
export const AIR_HEAT_RATIO = 1.4;

/**
 * Dynamic viscosity of air.
 *
 * Equation: mu = 1.458e-6 T^1.5 / (T + 110.4).
 *
 * @param tempK temperature [K]
 * @returns dynamic viscosity [Pa s]
 * Range: 100 to 1500 K.
 * Source: Sutherland's law with the constants of the US Standard Atmosphere 1976, eq. 51.
 * @example
 * airDynamicViscosity(288.15) // 1.7894e-5
 */
export function airDynamicViscosity(tempK: number): number {
  return (1.458e-6 * tempK ** 1.5) / (tempK + 110.4);
}

/** Air state on the bench: supply and ambient pressure, absolute [Pa], and temperature [K]. */
export interface AirSupply {
  readonly supply: number;
  readonly ambient: number;
  readonly tempK: number;
}

/**
 * Air through a hole into the open: choked, or below the critical ratio isentropic.
 *
 * Equation: choked m = Cd A p1 sqrt(g / (Rs T)) (2 / (g + 1))^((g + 1) / (2 (g - 1))).
 *
 * @param area [m2]
 * @param air supply and ambient [Pa absolute], tempK [K]
 * @returns mass flow [kg/s]
 * Range: supply at or above ambient.
 * Source: one-dimensional gas dynamics, White, Fluid Mechanics, ch. 9; Cd 0.65 as for fluid.
 * @example
 * airHoleFlow(1e-6, { supply: 376325, ambient: 101325, tempK: 293.15 }) // 5.77392e-4
 */
export function airHoleFlow(area: number, air: AirSupply): number {
  if (area <= 0 || air.supply <= air.ambient) return 0;
  const g = AIR_HEAT_RATIO;
  const ratio = air.ambient / air.supply;
  const critical = (2 / (g + 1)) ** (g / (g - 1));
  const r = Math.max(ratio, critical);
  const psi = Math.sqrt(((2 * g) / (g - 1)) * (r ** (2 / g) - r ** ((g + 1) / g)));
  return (HOLE_DISCHARGE * area * air.supply * psi) / Math.sqrt(AIR_GAS_CONSTANT * air.tempK);
}

/**
 * Air through a gap into the open.
 *
 * Equation: m = w h^3 (p1^2 - p2^2) / (24 mu L Rs T), never more than the choked flow of the area w h.
 *
 * @param gap width, height, length [m]
 * @param air supply and ambient [Pa absolute], tempK [K]
 * @returns mass flow [kg/s]
 * Range: supply at or above ambient.
 * Leaves out: the entry and exit loss between the two limits; near the limit it reads up to about a third high.
 * Source: isothermal compressible slot flow, Hamrock, Fundamentals of Fluid Film Lubrication; from memory.
 * @example
 * airGapFlow({ width: 0.014, height: 2e-5, length: 0.003 }, { supply: 376325, ambient: 101325, tempK: 293.15 }) // 1.33900e-4
 */
export function airGapFlow(gap: Gap, air: AirSupply): number {
  if (gap.height <= 0 || gap.width <= 0 || air.supply <= air.ambient) return 0;
  const slot =
    (gap.width * gap.height ** 3 * (air.supply ** 2 - air.ambient ** 2)) /
    (24 * airDynamicViscosity(air.tempK) * gap.length * AIR_GAS_CONSTANT * air.tempK);
  return Math.min(slot, airHoleFlow(gap.width * gap.height, air));
}

/** The usual supply of the bench test, 275 kPa gauge (40 psi), at 20 C. */
export const BENCH_AIR: AirSupply = {
  supply: ATMOSPHERE_PA + 275e3,
  ambient: ATMOSPHERE_PA,
  tempK: 293.15,
};
