/**
 * Density of a lubricating oil at a temperature.
 *
 * Equation: a = 0.6278 / rho15, rho = rho15 exp(-a d (1 + 0.8 a d)), d = T - 15.
 *
 * @param density15 density at 15 degC [kg/m3]
 * @param tempC temperature [degC]
 * @returns density [kg/m3]
 * Range: density15 800.9 to 1163.5 kg/m3, -50 to 150 degC.
 * Leaves out: pressure; a transmission's 2 MPa changes oil density by about 0.1 %.
 * Source: API MPMS 11.1 / ASTM D1250-04, lubricating oils, K1 = 0.34878 per degF; 0.6278 per degC is that
 * constant times 1.8 (also Table 54D of 1980, from memory).
 * @example
 * oilDensity(850, 100) // 795.764
 */
export function oilDensity(density15: number, tempC: number): number {
  const a = 0.6278 / density15;
  const d = tempC - 15;
  return density15 * Math.exp(-a * d * (1 + 0.8 * a * d));
}
