/**
 * The only place where a number changes its unit. Inside the engine all is SI; other units wear their name.
 * Source: NIST SP 811 (2008), Guide for the Use of the SI, appendix B.8; exact where the definition is exact.
 */

/** Ice point on the kelvin scale [K]. */
export const ICE_POINT_K = 273.15;
/** Pascals in one pound-force per square inch [Pa/psi]. */
export const PA_PER_PSI = 6894.757293168361;
/** Cubic metres in one US gallon, 231 cubic inches exactly [m3/gal]. */
export const M3_PER_US_GALLON = 3.785411784e-3;
/** Newton metres in one pound-force foot [N m/(lbf ft)]. */
export const NM_PER_LBF_FT = 1.3558179483314;
/** Square metres per second in one centistokes [m2/s/cSt]. */
export const M2S_PER_CST = 1e-6;
/** Standard atmosphere [Pa]. */
export const ATMOSPHERE_PA = 101325;

/**
 * Temperature on the kelvin scale.
 *
 * @param tempC temperature [degC]
 * @returns temperature [K]
 * Range: any.
 * Source: NIST SP 811, section 8.5.
 * @example
 * kelvin(40) // 313.15
 */
export function kelvin(tempC: number): number {
  return tempC + ICE_POINT_K;
}

/**
 * Temperature in degrees Fahrenheit.
 *
 * @param tempC temperature [degC]
 * @returns temperature [degF]
 * Range: any; the two scales meet at -40.
 * Source: NIST SP 811, appendix B.8.
 * @example
 * fahrenheit(-40) // -40
 */
export function fahrenheit(tempC: number): number {
  return 1.8 * tempC + 32;
}

/**
 * Temperature in degrees Celsius.
 *
 * @param tempF temperature [degF]
 * @returns temperature [degC]
 * Range: any.
 * Source: NIST SP 811, appendix B.8.
 * @example
 * celsius(212) // 100
 */
export function celsius(tempF: number): number {
  return (tempF - 32) / 1.8;
}

/**
 * Pressure in pascals.
 *
 * @param psi pressure [psi]
 * @returns pressure [Pa]
 * Range: any.
 * Source: NIST SP 811, appendix B.8.
 * @example
 * pascals(1) // 6894.757
 */
export function pascals(psi: number): number {
  return psi * PA_PER_PSI;
}

/**
 * Flow in litres a minute.
 *
 * @param flow volume flow [m3/s]
 * @returns volume flow [L/min]
 * Range: any.
 * Source: NIST SP 811: 1 L = 1e-3 m3.
 * @example
 * litresPerMinute(1e-3) // 60
 */
export function litresPerMinute(flow: number): number {
  return flow * 60000;
}

/**
 * Rotational speed in revolutions per second.
 *
 * @param rpm speed [rpm]
 * @returns speed [rev/s]
 * Range: any.
 * Source: definition of the minute.
 * @example
 * revPerSecond(600) // 10
 */
export function revPerSecond(rpm: number): number {
  return rpm / 60;
}
