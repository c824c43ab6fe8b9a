/** What the controls offer, which is what the fluid law and the fault catalogue allow. */
export const TEMP = { min: -30, max: 140, step: 1 } as const;
export const SPEED = { min: 500, max: 3000, step: 50 } as const;
/** [% of the way from a sound pump to the worst] */
export const WEAR = { min: 0, max: 100, step: 1 } as const;
/** Wear gap of the regulator bore [mm]. */
export const BORE = { min: 0, max: 0.25, step: 0.01 } as const;
/** Resistance of the filter against a clean one [times]. */
export const FILTER = { min: 1, max: 60, step: 1 } as const;
/** The cold state everything hot is set against [°C]. */
export { COLD_C } from '../../car/cold-and-hot.ts';
/** The hot state of the two readings [°C]. */
export { HOT_C } from '../../car/cold-and-hot.ts';
export const IDLE_RPM = 700;
export const FAST_RPM = 3000;
/** Every stop of the speed control, so that the chart's cursor can read each. */
export const SWEEP_RPM: readonly number[] = Array.from({ length: 51 }, (_, i) => 500 + i * 50);
