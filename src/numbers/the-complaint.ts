import { driveHeat, trainingLump, warmedTo, type DriveKind } from '../engine/index.ts';
import { degC, entry, type Entries } from './entry.ts';

/** How long the customer, or the shop, is said to drive [min]. */
const MINUTES = 20;
/** A mild day and a frosty one, the car left out overnight; and a car back from an hour's stop [°C]. */
const MILD_C = 20;
const FROST_C = -10;
const STOPPED_C = 60;

const after = (kind: DriveKind, startC: number, ambientC: number, what: string) =>
  degC(
    warmedTo(trainingLump, {
      fluidC: startC,
      coolantC: startC,
      ambientC,
      heat: driveHeat[kind],
      time: MINUTES * 60,
    }).fluidC,
    `after ${MINUTES} min of ${what}`,
  );

export const theComplaint: Entries = {
  'clock-minutes': entry('minutes', MINUTES, 'how long the drive of the clock is'),
  'clock-start-mild': degC(MILD_C, 'where the fluid starts on a mild day'),
  'clock-start-frost': degC(FROST_C, 'where the fluid starts after a night of frost'),
  'clock-start-stopped': degC(STOPPED_C, 'where the fluid starts after an hour’s stop'),
  'clock-idling': after('idling', MILD_C, MILD_C, 'idling from overnight, mild'),
  'clock-gentle': after('gentle', MILD_C, MILD_C, 'gentle driving from overnight, mild'),
  'clock-frost': after('gentle', FROST_C, FROST_C, 'gentle driving from overnight, frost'),
  'clock-stopped': after('gentle', STOPPED_C, MILD_C, 'gentle driving after an hour’s stop, mild'),
  'clock-pulling': after('pulling', MILD_C, MILD_C, 'pulling from overnight, mild'),
};
