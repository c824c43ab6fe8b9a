/**
 * The cars of the lesson on live data: engagements of the engine, and two that the engine does not know, which are made by
 * hand over the healthy hot one.
 */
import { illustrativeSettings } from '../engine/index.ts';
import { recording, SELECT, type RecordingId } from './recordings.ts';

export const LIVE_RECORDINGS = [
  'hot',
  'cold',
  'frost',
  'crack16',
  'friction',
  'crack25',
] as const satisfies readonly RecordingId[];
export const LIVE_CARS = [...LIVE_RECORDINGS, 'plug', 'shudder'] as const;
export type LiveCar = (typeof LIVE_CARS)[number];

/** Below this a shaft stands [rpm], as the log reader has it: few speed sensors read slower ones. */
export const STANDS_RPM = 30;
/** Sums of many steps miss a moment by this much [s]. */
const BIT = 1e-9;
/** A contact that opens once [s after selection]. */
export const PLUG = { at: 0.11, lasts: 0.05 } as const;
/** A clutch that grabs and lets go as the car pulls away: from then on [s after selection], swings a second, each way [rpm]. */
export const SHUDDER = { from: 3, swings: 10, rpm: 60 } as const;

export const recordingOf = (car: LiveCar): RecordingId =>
  car === 'plug' || car === 'shudder' ? 'hot' : car;

/** The recording between its rows [rpm]. */
function recordedAt(id: RecordingId, after: number): number {
  const { turbineRpm } = recording(id);
  const place = Math.max(0, (SELECT + after) / illustrativeSettings.sample);
  const row = Math.min(turbineRpm.length - 1, Math.floor(place));
  const here = turbineRpm[row] ?? 0;
  return here + (place - row) * ((turbineRpm[row + 1] ?? here) - here);
}

/** What the turbine does so long after selection [rpm]; what its sensor says, where that is what is wrong. */
export function turbineAt(car: LiveCar, after: number): number {
  const open = after - PLUG.at + BIT;
  if (car === 'plug' && open >= 0 && open < PLUG.lasts) return 0;
  const rpm = recordedAt(recordingOf(car), after);
  if (car !== 'shudder' || after < SHUDDER.from) return rpm;
  return rpm + SHUDDER.rpm * Math.sin(2 * Math.PI * SHUDDER.swings * (after - SHUDDER.from));
}

/** How quickly the turbine is pulled down [s]: from nine parts in ten of what it ran at until it stands. */
export function fallsIn(car: LiveCar): number {
  const stands = standsAfter(car);
  if (stands === null) throw new Error(`The turbine of ${car} does not stand.`);
  const level = 0.9 * turbineAt(car, 0);
  const step = illustrativeSettings.sample / 10;
  let after = stands;
  while (after > 0 && turbineAt(car, after) < level) after -= step;
  return stands - after;
}

/** When the turbine really stands [s after selection], if it does before the brake is let go. */
export function standsAfter(car: LiveCar): number | null {
  const { turbineRpm, stoppedAfter } = recording(recordingOf(car));
  if (stoppedAfter === null) return null;
  const first = Math.round(SELECT / illustrativeSettings.sample);
  const row = turbineRpm.findIndex((rpm, i) => i > first && rpm < STANDS_RPM);
  const [before = 0, here = 0] = turbineRpm.slice(row - 1, row + 1);
  const part = (before - STANDS_RPM) / (before - here);
  return (row - 1 + part) * illustrativeSettings.sample - SELECT;
}
