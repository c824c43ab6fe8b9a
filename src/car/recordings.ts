import { illustrativeSettings, training, trainingStory, type FaultSet } from '../engine/index.ts';
import { makeCar } from './car.ts';
import { engage } from './engage.ts';

/**
 * Eight engagements, recorded once with a controller that never acts. So a recording is what the
 * clutch does by itself, and the same recording can be judged by any limits. What it cannot show is
 * what would have come of acting: raised pressure might have held.
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

/** Everything the controller's sensors and the pedal told it, every 10 ms. */
export interface Recording {
  readonly id: RecordingId;
  readonly healthy: boolean;
  readonly turbineRpm: Float64Array;
  readonly outputRpm: Float64Array;
  readonly vehicleSpeed: Float64Array;
  readonly throttle: Float64Array;
  /** When the turbine really stood, after selection [s]; null if never. */
  readonly stoppedAfter: number | null;
  /** Starts the sensor's noise: another recording, another noise. */
  readonly seed: number;
}

export const SELECT = trainingStory.select;
export const END = trainingStory.end;
export const RATIO = training.drive.ratios.forward;

const neverActs = { ...illustrativeSettings, engagementSlipRpm: 1e9, ratioSlipRpm: 1e9 };

function record(id: RecordingId): Recording {
  const { healthy, tempC, brakeOff = trainingStory.brakeOff, ...given } = recipes[id];
  const { trace, stoppedAfter } = engage(makeCar(given), {
    tempC,
    settings: neverActs,
    story: { ...trainingStory, brakeOff },
    outputStep: illustrativeSettings.sample,
  });
  const { turbineRpm, outputRpm, vehicleSpeed, throttle } = trace;
  const seed = RECORDING_IDS.indexOf(id) + 1;
  return { id, healthy, turbineRpm, outputRpm, vehicleSpeed, throttle, stoppedAfter, seed };
}

const kept = new Map<RecordingId, Recording>();

/** Solved when first asked for, then kept: no control changes it. */
export function recording(id: RecordingId): Recording {
  const known = kept.get(id);
  if (known) return known;
  const fresh = record(id);
  kept.set(id, fresh);
  return fresh;
}
