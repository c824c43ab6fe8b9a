import { requireInRange } from '../error.ts';

/** The constants that fit many rubbers when the glass point is the reference [-]. */
export const WLF_C1 = 17.44;
/** See WLF_C1 [K]. */
export const WLF_C2 = 51.6;
/** How far above the glass point the law is used [K]. */
const WLF_REACH = 100;

/**
 * How many times as long rubber takes to spring back at one temperature as at another.
 *
 * Equation: t / t_ref = 10^(s(T) - s(T_ref)), s(T) = -C1 (T - Tg) / (C2 + T - Tg).
 *
 * @param tempC temperature [degC]
 * @param referenceC temperature that it is held against [degC]
 * @param glassC glass point of the rubber [degC]
 * @returns times as long [-]
 * Range: both temperatures from the glass point to 100 K above it.
 * Leaves out: what the rubber's own recipe does to the two constants (tens of percent of the exponent), and that aging moves the glass point.
 * Source: Williams, Landel and Ferry, J. Am. Chem. Soc. 77 (1955) 3701-3707, with their constants for all of the rubbers.
 * @example
 * springBackRatio(0, 20, -30) // 148.22
 */
export function springBackRatio(tempC: number, referenceC: number, glassC: number): number {
  const shift = (at: number): number => {
    const above = requireInRange(at, {
      name: 'Temperature',
      unit: 'C',
      min: glassC,
      max: glassC + WLF_REACH,
    });
    return (-WLF_C1 * (above - glassC)) / (WLF_C2 + above - glassC);
  };
  return 10 ** (shift(tempC) - shift(referenceC));
}
