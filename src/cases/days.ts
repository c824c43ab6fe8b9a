/** Days of a customer's: how warm the car starts, how it is driven, and when its fluid has come to a temperature. */
import { driveHeat, timeToReach, trainingLump, type DriveKind } from '../engine/index.ts';
import type { Day } from './answers.ts';

/** Air outside on all of the days, and fluid and coolant after an hour's stop on the road [°C]. */
export const OUTSIDE_C = 20;
export const AFTER_STOP_C = 60;
const DAY: Readonly<Record<Day, { readonly startC: number; readonly drive: DriveKind }>> = {
  'overnight-flat': { startC: OUTSIDE_C, drive: 'gentle' },
  'overnight-hills': { startC: OUTSIDE_C, drive: 'pulling' },
  'stop-flat': { startC: AFTER_STOP_C, drive: 'gentle' },
  'stop-hills': { startC: AFTER_STOP_C, drive: 'pulling' },
};
/** Nobody's drive is longer than this [min]. */
const LONGEST_DRIVE = 90;

/** Minutes until the fluid is as warm as that on a day; null where it never is. */
export function minutesUntil(fromC: number, day: Day): number | null {
  const { startC, drive } = DAY[day];
  if (startC >= fromC) return 0;
  const time = timeToReach(
    trainingLump,
    { fluidC: startC, coolantC: startC, ambientC: OUTSIDE_C, heat: driveHeat[drive] },
    fromC,
  );
  return time === null || time > LONGEST_DRIVE * 60 ? null : time / 60;
}

/** What the clock says of it. */
export function clockSays(minutes: number | null): string {
  if (minutes === null) return 'not';
  if (minutes <= 2) return 'first';
  if (minutes <= 10) return 'ten';
  return minutes <= 30 ? 'half' : 'longer';
}
