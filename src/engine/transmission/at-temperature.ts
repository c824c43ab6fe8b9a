import { perCircuit } from './from-sheet.ts';
import { CIRCUITS } from './circuits.ts';
import type { Plant } from './plant.ts';

/** Gap of a fully hardened lip in the cold [m], and up to what temperature [degC]. */
export const HARD_LIP_COLD = { gap: 0.25e-3, tempC: 0 } as const;
/** Gap of a fully hardened lip when warm [m], and from what temperature [degC]. */
export const HARD_LIP_WARM = { gap: 0.03e-3, tempC: 60 } as const;
/** A fading valve begins to fade here [degC]. */
export const FADE_BEGINS_C = 40;
/** It has faded all it will by here [degC]. */
export const FADE_ENDS_C = 100;

const share = (value: number, from: number, to: number): number =>
  Math.min(1, Math.max(0, (value - from) / (to - from)));

/**
 * Gap that a hardened piston lip leaves at a temperature.
 *
 * Equation: h = hardness x (0.25 mm at 0 degC and below, falling in a straight line to 0.03 mm at 60 degC and above).
 *
 * @param hardness 0 soft to 1 hardened through [-]
 * @param tempC temperature [degC]
 * @returns height [m]
 * Range: hardness 0 to 1, any temperature.
 * Leaves out: that the lip softens with time at heat, and that pressure presses it on.
 * Source: that hard rubber shrinks from its bore in the cold and seals warm is common practice, no source; figures invented.
 * @example
 * hardLipGap(1, 30) // 1.4e-4
 */
export function hardLipGap(hardness: number, tempC: number): number {
  const warm = share(tempC, HARD_LIP_COLD.tempC, HARD_LIP_WARM.tempC);
  return hardness * (HARD_LIP_COLD.gap + (HARD_LIP_WARM.gap - HARD_LIP_COLD.gap) * warm);
}

/**
 * A plant as its parts are at a temperature: hardened lips open in the cold, a fading valve holds less when hot.
 *
 * Equation: valve holds command x (1 - fade clamp((T - 40) / 60, 0, 1)); lips as hardLipGap.
 *
 * @param plant lipHardness and valveFade of each circuit [-]
 * @param tempC temperature of fluid and parts [degC]
 * @returns the plant with its hardLip gaps [m] and valveHolds [-]; itself where neither fault is in it
 * Range: any temperature.
 * Leaves out: parts that are not as warm as the fluid.
 * Source: fading valves and coils are common practice, no source; figures invented.
 * @example
 * atTemperature({ ...training, valveFade: { forward: 0.6, reverse: 0, high: 0 } }, 70).valveHolds.forward // 0.7
 */
export function atTemperature(plant: Plant, tempC: number): Plant {
  const { lipHardness, valveFade } = plant;
  if (CIRCUITS.every((circuit) => lipHardness[circuit] === 0 && valveFade[circuit] === 0)) {
    return plant;
  }
  const hot = share(tempC, FADE_BEGINS_C, FADE_ENDS_C);
  return {
    ...plant,
    valveHolds: perCircuit((circuit) => 1 - valveFade[circuit] * hot),
    leaks: perCircuit((circuit) => {
      const leaks = plant.leaks[circuit];
      const height = hardLipGap(lipHardness[circuit], tempC);
      return { ...leaks, hardLip: { ...leaks.hardLip, height } };
    }),
  };
}
