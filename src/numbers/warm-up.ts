import { driveHeat, timeToReach, trainingLump, warmedTo, type DriveKind } from '../engine/index.ts';
import { degC, entry, type Entries } from './entry.ts';

/** From overnight cold on a mild day. */
const START_C = 20;
const start = { fluidC: START_C, coolantC: START_C, ambientC: START_C };
/** Long enough for anything to settle [s]. */
const LONG = 1e6;

/** Minutes of a kind of driving from a cold start to a temperature; throws where it never comes there. */
export function minutesTo(targetC: number, kind: DriveKind) {
  const time = timeToReach(trainingLump, { ...start, heat: driveHeat[kind] }, targetC);
  if (time === null) throw new Error(`The course says that ${kind} gets to ${targetC} °C.`);
  return entry('minutes', time / 60, `${kind} from ${START_C} °C to ${targetC} °C`);
}
const after = (kind: DriveKind, time: number, what: string) =>
  degC(warmedTo(trainingLump, { ...start, heat: driveHeat[kind], time }).fluidC, what);

export const warmUp: Entries = {
  'warm-up-idling-end': after('idling', LONG, 'where idling alone ends on a 20 °C day'),
  'warm-up-gentle-15': after('gentle', 15 * 60, 'after 15 min of gentle driving'),
  'warm-up-gentle-to-83': minutesTo(83, 'gentle'),
  'warm-up-pulling-end': after('pulling', LONG, 'where pulling ends'),
};
