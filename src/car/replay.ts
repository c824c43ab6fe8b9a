import {
  controllerCycle,
  rangeSelected,
  sensorReading,
  type ControllerContext,
  type ControllerEvent,
  type ControllerSettings,
  type ControllerState,
} from '../engine/index.ts';
import { SELECT, type Recording } from './recordings.ts';

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
  // The same controller with no patience limit keeps count of how long slip lasts, by its own rules.
  const counting = { ...context, settings: { ...settings, ratioTime: Number.MAX_VALUE } };
  const sensor = { noiseRpm, resolutionRpm, seed };
  const first = Math.round(SELECT / settings.sample) + 1;
  let memory = rangeSelected(SELECT);
  let counter = memory;
  let longestOver = 0;
  const slipSeen: number[] = [];
  const events: ControllerEvent[] = [];
  const states: { time: number; state: ControllerState }[] = [
    { time: 0, state: 'waiting' },
    { time: SELECT, state: 'engaging' },
  ];
  for (let row = 0; row < turbineRpm.length; row += 1) {
    const time = row * settings.sample;
    const output = outputRpm[row] ?? 0;
    const seen = sensorReading(sensor, turbineRpm[row] ?? 0, row);
    slipSeen.push(Math.abs(seen - ratio * output));
    if (row < first) continue;
    const input = {
      time,
      turbineRpm: seen,
      outputRpm: output,
      vehicleSpeed: vehicleSpeed[row] ?? 0,
      throttle: throttle[row] ?? 0,
    };
    const cycle = controllerCycle(memory, input, context);
    if (cycle.memory.state !== memory.state) states.push({ time, state: cycle.memory.state });
    memory = cycle.memory;
    events.push(...cycle.events);
    counter = controllerCycle(counter, input, counting).memory;
    if (counter.slipSince !== null) longestOver = Math.max(longestOver, time - counter.slipSince);
  }
  const failure = events.find(
    ({ event }) => event === 'engagement not finished' || event === 'pressure raised',
  );
  const code = events.find(({ event }) => event === 'code stored');
  return {
    slipSeen,
    events,
    states,
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
