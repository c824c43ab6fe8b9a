import {
  illustrativeSettings,
  throttleAt,
  trainingStory,
  type EngagementStory,
  type FaultSet,
} from '../engine/index.ts';
import { speedsIn } from './speeds-as-text.ts';

/**
 * Eight engagements, recorded once with a controller that never acts. So a recording is what the
 * clutch does by itself, and the same recording can be judged by any limits. What it cannot show is
 * what would have come of acting: raised pressure might have held. They are solved in record.ts, when a
 * page is built, so that no page carries the solver.
 */
export const RECORDING_IDS = [
  'cold',
  'hot',
  'frost',
  'hurry',
  'crack16',
  'crack25',
  'crack30',
  'friction',
] as const;
export type RecordingId = (typeof RECORDING_IDS)[number];

interface Recipe {
  readonly healthy: boolean;
  readonly tempC: number;
  /** Height of the crack in the transfer seal [mm]. */
  readonly crackMm?: number;
  readonly faults?: FaultSet;
  /** Brake off and throttle opening from here [s]; selection is at 0.5 s. */
  readonly brakeOff?: number;
}

export const recipes: Readonly<Record<RecordingId, Recipe>> = {
  cold: { healthy: true, tempC: 20 },
  hot: { healthy: true, tempC: 100 },
  // Thick fluid alone makes it late; below this it would miss the usual check with nothing wrong.
  frost: { healthy: true, tempC: -12 },
  hurry: { healthy: true, tempC: 100, brakeOff: 0.9 },
  crack16: { healthy: false, tempC: 100, crackMm: 0.16 },
  crack25: { healthy: false, tempC: 100, crackMm: 0.25 },
  crack30: { healthy: false, tempC: 100, crackMm: 0.3 },
  friction: { healthy: false, tempC: 100, faults: { frictionWear: { severity: 0.8 } } },
};

interface Common {
  /** When the turbine really stood, after selection [s]; null if never. */
  readonly stoppedAfter: number | null;
  /** Of the gear it was made in: turbine over output. */
  readonly ratio: number;
}
/** As a page brings it along; what the driver does is known there. */
export interface Recorded extends Common {
  /** Both as speedsIn reads them. */
  readonly turbine: string;
  readonly output: string;
  /** Road speed for each rpm of the output [m/s]. */
  readonly perRpm: number;
}
export type AllRecorded = Readonly<Record<RecordingId, Recorded>>;

/** Everything the controller's sensors and the pedal told it, every 10 ms. */
export interface Recording extends Common {
  readonly healthy: boolean;
  readonly turbineRpm: readonly number[];
  readonly outputRpm: readonly number[];
  readonly vehicleSpeed: readonly number[];
  readonly throttle: readonly number[];
  /** Starts the sensor's noise: another recording, another noise. */
  readonly seed: number;
}

export const SELECT = trainingStory.select;
export const END = trainingStory.end;

/** What the driver does in a recording. */
export const storyOf = (id: RecordingId): EngagementStory => ({
  ...trainingStory,
  brakeOff: recipes[id].brakeOff ?? trainingStory.brakeOff,
});

let brought: Partial<AllRecorded> = {};
const read = new Map<RecordingId, Recording>();

/** Takes what the page brought along, all of them or some. They are the same on every page, so it need not say for whom. */
export function bringRecordings(some: Partial<AllRecorded>): void {
  brought = { ...brought, ...some };
}

/** What was recorded, as the controller's sensors and the pedal told it. */
export function readRecorded(
  id: RecordingId,
  { turbine, output, perRpm, ...common }: Recorded,
): Recording {
  const outputRpm = speedsIn(output);
  const story = storyOf(id);
  return {
    ...common,
    healthy: recipes[id].healthy,
    turbineRpm: speedsIn(turbine),
    outputRpm,
    vehicleSpeed: outputRpm.map((rpm) => rpm * perRpm),
    throttle: outputRpm.map((_, row) => throttleAt(story, row * illustrativeSettings.sample)),
    seed: RECORDING_IDS.indexOf(id) + 1,
  };
}

/** Read when first asked for, then kept: no control changes it. */
export function recording(id: RecordingId): Recording {
  const known = read.get(id);
  if (known) return known;
  const one = brought[id];
  if (!one) throw new Error(`The page brought no recording ${id}.`);
  const fresh = readRecorded(id, one);
  read.set(id, fresh);
  return fresh;
}
