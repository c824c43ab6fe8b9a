/** What the controls offer, which is what the fluid law and the fault catalogue allow. */
export const TEMP = { min: -30, max: 140, step: 1 } as const;
export { CRACK } from '../../simulation/choices/number.ts';
export const SPEED = { min: 500, max: 3000, step: 50 } as const;
/** The cold state everything hot is set against [°C]. */
export { COLD_C } from '../../car/cold-and-hot.ts';
/** Sixty points: under three degrees apart, no corner of a line is lost on a projector. */
export const SWEEP_TEMPS: readonly number[] = Array.from(
  { length: 60 },
  (_, i) => TEMP.min + (i * (TEMP.max - TEMP.min)) / 59,
);
