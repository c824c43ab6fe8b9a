/** What the controls offer. Wide enough for three textbook clutches beside the training one. */
export const PRESSURE = { min: 0, max: 1200, step: 1 } as const;
/** Steel on iron in oil 0.03 up to dry lining 0.3 (R. C. Juvinall and K. M. Marshek, ch. 18, table of friction coefficients). */
export const FRICTION = { min: 0.03, max: 0.3, step: 0.01 } as const;
export const FACES = { min: 1, max: 16, step: 1 } as const;
/** [cm²] */
export const AREA = { min: 20, max: 260, step: 1 } as const;
/** [mm] */
export const RADIUS = { min: 30, max: 120, step: 1 } as const;
/** [N] */
export const SPRING = { min: 0, max: 2500, step: 50 } as const;
/** Full height of the torque axis [N m]: the training clutch at 1200 kPa. Fixed, so that change is seen as change. */
export const FULL_TORQUE = 800;
/** The chart's pressures. Two points would do for a line with a corner; these keep the cursor fine enough to read. */
export const SWEEP: readonly number[] = Array.from({ length: 61 }, (_, i) => i * 20);
