/** How much longer steel gets [1/K]. */
export const STEEL_EXPANSION = 12e-6;
/** The same of rubber: ten times steel's, a rule of thumb [1/K]. */
export const RUBBER_EXPANSION = 120e-6;

/**
 * How much more a piece of rubber grows than steel of the same length, from one temperature to another; negative where it shrinks.
 *
 * Equation: d = L (a_rubber - a_steel) (T2 - T1).
 *
 * @param reach free length of the rubber, from what holds it to what it seals on [m]
 * @param fromC temperature at first [degC]
 * @param toC temperature then [degC]
 * @returns growth over that of the steel [m]
 * Range: rubber above its glass point, steel or iron round it.
 * Leaves out: that rubber which is held on both sides cannot follow, that books give rubbers from 5 to 18 times steel's, and what the fluid swells it by.
 * Source: linear thermal expansion; steel's figure from memory; ten times it for rubber by a trade magazine's rule of thumb (2015).
 * @example
 * rubberOverSteel(0.01, 20, -30) // -5.4e-5
 */
export function rubberOverSteel(reach: number, fromC: number, toC: number): number {
  return reach * (RUBBER_EXPANSION - STEEL_EXPANSION) * (toC - fromC);
}
