/** The form of a kept freeze frame, for whoever writes and whoever reads it. */

/** Temperatures of the drives [°C]. */
export const DRIVES_C = [0, 20, 40, 60, 80, 100] as const;
/** Numbers that stand before the frames of a car. */
export const FRAMES_FROM = 3;
/**
 * Numbers of a frame: place of its temperature, time after selection [s/100], engine, turbine as its sensor says it, output [rpm],
 * pressure commanded, and in the clutch, which no controller knows [kPa].
 */
export const FRAME_WIDTH = 7;
