import { EngineError, requireInRange } from '../error.ts';
import { M2S_PER_CST } from '../units.ts';
import { oilDensity } from './density.ts';
import {
  FLUID_TEMP_C,
  KINEMATIC_CST,
  viscosityLine,
  viscosityOnLine,
} from './viscosity-temperature.ts';
import type { ViscosityLine } from './viscosity-temperature.ts';

/** What a data sheet says of a fluid: two kinematic viscosities and a density. */
export interface FluidSpec {
  readonly kv40CSt: number;
  readonly kv100CSt: number;
  readonly density15: number;
}

/** A fluid ready for use at any temperature. */
export interface Fluid extends FluidSpec {
  readonly line: ViscosityLine;
}

/** What a fluid is at one temperature, SI. */
export interface FluidState {
  readonly kinematic: number;
  readonly dynamic: number;
  readonly density: number;
}

/** Generic classes, no brand; two of the three pairs are published triplets (tests name the source). */
export const fluidClasses = {
  standard: { kv40CSt: 35, kv100CSt: 7.3, density15: 865 },
  'low-viscosity': { kv40CSt: 29.6, kv100CSt: 6, density15: 845 },
  'ultra-low': { kv40CSt: 18.5, kv100CSt: 4.4, density15: 835 },
} as const satisfies Record<string, FluidSpec>;

/** Name of a generic fluid class. */
export type FluidClass = keyof typeof fluidClasses;
/** The class taken where a request names none. */
export const DEFAULT_FLUID: FluidClass = 'low-viscosity';

/** Limits for a fluid typed by its two published numbers. */
export const FLUID_LIMITS = {
  kv40CSt: { name: 'Kinematic viscosity at 40 C', unit: 'cSt', min: 2, max: 2000 },
  kv100CSt: { name: 'Kinematic viscosity at 100 C', unit: 'cSt', min: 1, max: 200 },
  density15: { name: 'Density at 15 C', unit: 'kg/m3', min: 800.9, max: 1163.5 },
} as const;

/**
 * A fluid from its two published kinematic viscosities and its density.
 *
 * @param spec kv40CSt and kv100CSt [cSt], density15 [kg/m3]
 * @returns the fluid with its viscosity-temperature line [-]
 * Range: kv40 2 to 2000 cSt, kv100 1 to 200 cSt and below kv40, density 800.9 to 1163.5 kg/m3.
 * @throws EngineError out of range, or when the fluid would be thicker hot than cold.
 * Source: ASTM D341; API MPMS 11.1.
 * @example
 * makeFluid({ kv40CSt: 29.6, kv100CSt: 6, density15: 845 }).line.b // 3.33196
 */
export function makeFluid(spec: FluidSpec): Fluid {
  const kv40CSt = requireInRange(spec.kv40CSt, FLUID_LIMITS.kv40CSt);
  const kv100CSt = requireInRange(spec.kv100CSt, FLUID_LIMITS.kv100CSt);
  const density15 = requireInRange(spec.density15, FLUID_LIMITS.density15);
  if (kv100CSt >= kv40CSt) {
    throw new EngineError(
      'kv100CSt',
      `Kinematic viscosity at 100 C is ${kv100CSt} cSt and at 40 C ${kv40CSt} cSt; the value at 100 C must be the smaller, since every such fluid thins as it warms.`,
    );
  }
  return {
    kv40CSt,
    kv100CSt,
    density15,
    line: viscosityLine(
      { tempC: 40, kinematicCSt: kv40CSt },
      { tempC: 100, kinematicCSt: kv100CSt },
    ),
  };
}

/**
 * Kinematic viscosity of a fluid.
 *
 * @param fluid the fluid [-]
 * @param tempC temperature [degC]
 * @returns kinematic viscosity [cSt]
 * Range: -30 to 140 degC.
 * @throws EngineError outside the range, naming it.
 * Source: ASTM D341.
 * @example
 * kinematicCSt(makeFluid({ kv40CSt: 34.5, kv100CSt: 7.4, density15: 850 }), 20) // 76.836
 */
export function kinematicCSt(fluid: Fluid, tempC: number): number {
  const kinematic = viscosityOnLine(fluid.line, requireInRange(tempC, FLUID_TEMP_C));
  if (kinematic > KINEMATIC_CST.max || !Number.isFinite(kinematic)) {
    throw new EngineError(
      'tempC',
      `At ${tempC} C this fluid would come out thicker than ${KINEMATIC_CST.max} cSt, beyond ASTM D341; its two published viscosities are too far apart for so low a temperature.`,
    );
  }
  return kinematic;
}

/**
 * What a fluid is at a temperature: kinematic viscosity, dynamic viscosity, density.
 *
 * Equation: mu = v rho.
 *
 * @param fluid the fluid [-]
 * @param tempC temperature [degC]
 * @returns kinematic [m2/s], dynamic [Pa s], density [kg/m3]
 * Range: -30 to 140 degC.
 * @throws EngineError outside the range, naming it.
 * Source: ASTM D341; API MPMS 11.1.
 * @example
 * fluidAt(makeFluid({ kv40CSt: 34.5, kv100CSt: 7.4, density15: 850 }), 100).dynamic // 0.005889
 */
export function fluidAt(fluid: Fluid, tempC: number): FluidState {
  const kinematic = kinematicCSt(fluid, tempC) * M2S_PER_CST;
  const density = oilDensity(fluid.density15, tempC);
  return { kinematic, dynamic: kinematic * density, density };
}

/**
 * How much denser a fluid is at one temperature than at another: by so much it swells on the way.
 *
 * @param fluid density15 [kg/m3]
 * @param coldC temperature above the line [degC]
 * @param tempC temperature below the line [degC]
 * @returns density at the first over density at the second [-]
 * Range: as oilDensity.
 * Source: API MPMS 11.1.
 * @example
 * densityRatio({ kv40CSt: 29.6, kv100CSt: 6, density15: 845 }, 20, 100) // 1.06462
 */
export function densityRatio(fluid: FluidSpec, coldC: number, tempC: number): number {
  return oilDensity(fluid.density15, coldC) / oilDensity(fluid.density15, tempC);
}
