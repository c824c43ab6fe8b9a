import { requireInRange } from '../error.ts';
import { kelvin } from '../units.ts';

/** Temperatures the site offers. Below, polymer-thickened fluids part from the law; above, they do not last. */
export const FLUID_TEMP_C = { name: 'Temperature', unit: 'C', min: -30, max: 140 } as const;
/** Kinematic viscosities the law is meant for: ASTM D341 names 2 to 2e7 cSt with these terms; 0.21 is its end. */
export const KINEMATIC_CST = {
  name: 'Kinematic viscosity',
  unit: 'cSt',
  min: 0.21,
  max: 2e7,
} as const;

/** The two constants of the straight line of ASTM D341: log10 log10 Z = a - b log10 T. */
export interface ViscosityLine {
  readonly a: number;
  readonly b: number;
}

/**
 * The Z of ASTM D341 for a kinematic viscosity.
 *
 * Equation: Z = v + 0.7 + exp(-1.47 - 1.84 v - 0.51 v^2). The exponential is to base e; several published
 * programs use base 10, which goes unnoticed above 2 cSt.
 *
 * @param kinematicCSt kinematic viscosity v [cSt]
 * @returns Z [-]
 * Range: 0.21 to 2e7 cSt.
 * Source: ASTM D341, equation for Z with the low-viscosity term.
 * @example
 * viscosityZ(10) // 10.7
 */
export function viscosityZ(kinematicCSt: number): number {
  const v = kinematicCSt;
  return v + 0.7 + Math.exp(-1.47 - 1.84 * v - 0.51 * v * v);
}

/**
 * The kinematic viscosity that belongs to a Z of ASTM D341.
 *
 * Equation: x = Z - 0.7, v = x - exp(-0.7487 - 3.295 x + 0.6119 x^2 - 0.3193 x^3).
 * Leaves out: it is the standard's own approximate inverse, off by up to 1e-4 relative below 2 cSt and
 * exact to 1e-10 from 5 cSt up.
 *
 * @param z Z [-]
 * @returns kinematic viscosity [cSt]
 * Range: 0.21 to 2e7 cSt.
 * Source: ASTM D341, inverse equation.
 * @example
 * viscosityFromZ(10.7) // 10
 */
export function viscosityFromZ(z: number): number {
  const x = z - 0.7;
  return x - Math.exp(-0.7487 - 3.295 * x + 0.6119 * x * x - 0.3193 * x * x * x);
}

/**
 * The viscosity-temperature line through two known points.
 *
 * Equation: log10 log10 Z = a - b log10 T, T in kelvin.
 *
 * @param cool kinematic viscosity at the lower temperature [cSt at degC]
 * @param warm kinematic viscosity at the higher temperature [cSt at degC]
 * @returns constants a and b [-]
 * Range: 0.21 to 2e7 cSt, the cooler point the thicker.
 * @throws EngineError when a viscosity is out of range.
 * Source: ASTM D341.
 * @example
 * viscosityLine({ tempC: 40, kinematicCSt: 69 }, { tempC: 100, kinematicCSt: 10.1 }).a // 8.503836
 */
export function viscosityLine(
  cool: { tempC: number; kinematicCSt: number },
  warm: { tempC: number; kinematicCSt: number },
): ViscosityLine {
  requireInRange(warm.tempC - cool.tempC, {
    name: 'Distance between the two temperatures',
    unit: 'C',
    min: 1,
    max: 400,
  });
  const y = (cSt: number): number =>
    Math.log10(Math.log10(viscosityZ(requireInRange(cSt, KINEMATIC_CST))));
  const y1 = y(cool.kinematicCSt);
  const y2 = y(warm.kinematicCSt);
  const x1 = Math.log10(kelvin(cool.tempC));
  const x2 = Math.log10(kelvin(warm.tempC));
  const b = (y1 - y2) / (x2 - x1);
  return { a: y1 + b * x1, b };
}

/**
 * Kinematic viscosity on a viscosity-temperature line.
 *
 * Equation: Z = 10^(10^(a - b log10 T)), then the inverse for v.
 *
 * @param line constants a and b [-]
 * @param tempC temperature [degC]
 * @returns kinematic viscosity [cSt]
 * Range: -30 to 140 degC is where the site uses it; the law itself is only as good as the extrapolation.
 * Source: ASTM D341.
 * @example
 * viscosityOnLine({ a: 8.503836, b: 3.300911 }, 60) // 31.1
 */
export function viscosityOnLine(line: ViscosityLine, tempC: number): number {
  return viscosityFromZ(10 ** (10 ** (line.a - line.b * Math.log10(kelvin(tempC)))));
}
