import {
  sensorReading,
  slipRpm,
  type ControllerContext,
  type ControllerEvent,
  type ControllerSettings,
  type ControllerState,
} from '../engine/index.ts';
import { SELECT, type Recording } from './recordings.ts';
import { watch } from './watch.ts';

/** How well the turbine sensor reads [rpm]. */
export interface SensorQuality {
  readonly noiseRpm: number;
  readonly resolutionRpm: number;
}

/** What one recording comes to under one set of limits. Times from the start of the recording [s]. */
export interface Replay {
  /** Slip as the controller sees it, without its sign [rpm], every 10 ms. */
  readonly slipSeen: readonly number[];
  readonly events: readonly ControllerEvent[];
  readonly states: readonly { readonly time: number; readonly state: ControllerState }[];
  /** The first check that failed, and how long after selection [s]. */
  readonly failed: { readonly check: 'engagement' | 'ratio'; readonly after: number } | null;
  /** When the code was stored, after selection [s]. */
  readonly codeAfter: number | null;
  /** The longest time without a break that slip was over the ratio limit while that check ran [s]. */
  readonly longestOver: number;
}

/**
 * The engine's own controller, run over recorded signals. Open loop: the recording goes on as it
 * was whatever the controller decides.
 */
export function replay(
  { turbineRpm, outputRpm, vehicleSpeed, throttle, ratio, seed }: Recording,
  settings: ControllerSettings,
  { noiseRpm, resolutionRpm }: SensorQuality,
): Replay {
  const context: ControllerContext = {
    settings,
    rangeSelection: 'electronic',
    mechanicalFailSafe: 'neutral',
    ratio,
    ratioCode: 'P0731',
  };
  const sensor = { noiseRpm, resolutionRpm, seed };
  const first = Math.round(SELECT / settings.sample) + 1;
  const seen = turbineRpm.map((rpm, row) => sensorReading(sensor, rpm, row));
  const slipSeen = seen.map((rpm, row) => Math.abs(slipRpm(rpm, ratio, outputRpm[row] ?? 0)));
  const inputs = seen.slice(first).map((rpm, i) => ({
    time: (first + i) * settings.sample,
    turbineRpm: rpm,
    outputRpm: outputRpm[first + i] ?? 0,
    vehicleSpeed: vehicleSpeed[first + i] ?? 0,
    throttle: throttle[first + i] ?? 0,
  }));
  const { events, states, longestOver } = watch(inputs, SELECT, context);
  const failure = events.find(
    ({ event }) => event === 'engagement not finished' || event === 'pressure raised',
  );
  const code = events.find(({ event }) => event === 'code stored');
  return {
    slipSeen,
    events,
    states: [{ time: 0, state: 'waiting' }, ...states],
    failed: failure
      ? {
          check: failure.event === 'pressure raised' ? 'ratio' : 'engagement',
          after: failure.time - SELECT,
        }
      : null,
    codeAfter: code ? code.time - SELECT : null,
    longestOver,
  };
}
