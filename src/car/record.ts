import { illustrativeSettings, RAD_S_PER_RPM, training } from '../engine/index.ts';
import { makeCar } from './car.ts';
import { engage } from './engage.ts';
import {
  recipes,
  RECORDING_IDS,
  storyOf,
  type AllRecorded,
  type Recorded,
  type RecordingId,
} from './recordings.ts';
import { speedsAsText } from './speeds-as-text.ts';

const neverActs = { ...illustrativeSettings, engagementSlipRpm: 1e9, ratioSlipRpm: 1e9 };

/** One engagement with a controller that never acts. */
export const solved = (id: RecordingId) =>
  engage(makeCar(recipes[id]), {
    tempC: recipes[id].tempC,
    settings: neverActs,
    story: storyOf(id),
    outputStep: illustrativeSettings.sample,
  });

/** One of them, as a page brings it along. */
export function record(id: RecordingId): Recorded {
  const { trace, stoppedAfter } = solved(id);
  const { ratios, wheelRadius, finalDrive } = training.drive;
  return {
    turbine: speedsAsText(trace.turbineRpm),
    output: speedsAsText(trace.outputRpm),
    stoppedAfter,
    ratio: ratios.forward,
    perRpm: (RAD_S_PER_RPM * wheelRadius) / finalDrive,
  };
}

/** Some of them, for a page to bring along. */
export const recordSome = <Id extends RecordingId>(ids: readonly Id[]): Pick<AllRecorded, Id> =>
  Object.fromEntries(ids.map((id) => [id, record(id)])) as Pick<AllRecorded, Id>;

export const recordAll = (): AllRecorded => recordSome(RECORDING_IDS);
