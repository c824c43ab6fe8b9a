/** Discharge coefficient of a short drilled hole; Rabie gives 0.60 to 0.65. */
export const HOLE_DISCHARGE = 0.65;
/** Reynolds number at which a hole turns from laminar to turbulent in the smoothed law; from memory, near 10. */
export const HOLE_TRANSITION_REYNOLDS = 10;

/**
 * Flow through a drilled hole or an open port; odd in the pressure difference, smooth through zero.
 *
 * Equation: Q = Cd A sqrt(2/rho) dp / (dp^2 + pc^2)^(1/4), pc = rho/2 (Ret v / (Cd D))^2, D = sqrt(4 A / pi).
 * For dp well above pc it is the turbulent orifice Q = Cd A sqrt(2 dp / rho).
 *
 * @param area hole area [m2]
 * @param dp pressure difference [Pa]
 * @param density [kg/m3]
 * @param kinematic kinematic viscosity [m2/s]
 * @returns flow [m3/s]
 * Range: sharp or short holes; zero area gives zero.
 * Leaves out: Cd falls with Reynolds number below a few hundred (Wu, Burton and Schoenau 2002), so a hole in very
 * cold fluid passes somewhat less than this says.
 * Source: orifice equation, Rabie (2009) eq. 2.37-2.39; smoothing after Ellman and Piche, J. Dyn. Sys. 121 (1999)
 * 721-724, in the form used by modelling tools (pc from memory).
 * @example
 * holeFlow(3.1415927e-6, 4e5, 850, 1e-5) // 6.26468e-5
 */
export function holeFlow(area: number, dp: number, density: number, kinematic: number): number {
  if (area <= 0 || dp === 0) return 0;
  const diameter = Math.sqrt((4 * area) / Math.PI);
  const speed = (HOLE_TRANSITION_REYNOLDS * kinematic) / (HOLE_DISCHARGE * diameter);
  const critical = (density / 2) * speed * speed;
  return (
    (HOLE_DISCHARGE * area * Math.sqrt(2 / density) * dp) /
    Math.sqrt(Math.sqrt(dp * dp + critical * critical))
  );
}

/**
 * Area of a round hole.
 *
 * @param diameter [m]
 * @returns area [m2]
 * Range: zero and above.
 * Source: geometry.
 * @example
 * holeArea(2) // 3.141592653589793
 */
export function holeArea(diameter: number): number {
  return (Math.PI * diameter * diameter) / 4;
}
