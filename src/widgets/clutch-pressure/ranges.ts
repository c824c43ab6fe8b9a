/** What the controls offer, which is what the fluid law and the fault catalogue allow. */
export const TEMP = { min: -30, max: 140, step: 1 } as const;
export const CRACK = { min: 0, max: 0.4, step: 0.01 } as const;
/**
 * The next stop of the crack's control from a value [mm]: a hundredth of a millimetre from a whole one, a thousandth of an
 * inch from anything else, as a US reader's control steps. Tasks that ask for "the widest that holds" are judged by it.
 */
export const crackStop = (mm: number): number =>
  Math.abs(mm / CRACK.step - Math.round(mm / CRACK.step)) < 1e-6 ? CRACK.step : 0.0254;
export const SPEED = { min: 500, max: 3000, step: 50 } as const;
/** The cold state everything hot is set against [°C]. */
export const COLD_C = 20;
/** Sixty points: under three degrees apart, no corner of a line is lost on a projector. */
export const SWEEP_TEMPS: readonly number[] = Array.from(
  { length: 60 },
  (_, i) => TEMP.min + (i * (TEMP.max - TEMP.min)) / 59,
);
