import { rubberOverSteel, springBackRatio } from '../engine/index.ts';

/** A piston lip as the course has it; the three sizes are invented. */
export const LIP = {
  /** How far a new lip is pressed in, at shop temperature [mm]. */
  newMm: 0.25,
  /** Free rubber between piston and drum [mm]. */
  reachMm: 10,
  /** The glass point of its rubber [°C]. */
  glassC: -30,
} as const;
/** Where its squeeze is measured, and what its spring is held against [°C]. */
export const SHOP_C = 20;

/**
 * What is left of a lip's squeeze [mm]: what set has not taken, and what the rubber has grown or shrunk against the drum.
 * Below zero it stands off.
 */
export const squeezeMm = (setShare: number, tempC: number): number =>
  LIP.newMm * (1 - setShare) + 1e3 * rubberOverSteel(LIP.reachMm / 1e3, SHOP_C, tempC);

/** Where a lip that has set stands off its drum [°C]. */
export const standsOffBelowC = (setShare: number): number =>
  SHOP_C - (LIP.newMm * (1 - setShare)) / (1e3 * rubberOverSteel(LIP.reachMm / 1e3, 0, 1));

/** How many times as long as in the shop the lip takes to spring back [-]. */
export const slowness = (tempC: number): number => springBackRatio(tempC, SHOP_C, LIP.glassC);
