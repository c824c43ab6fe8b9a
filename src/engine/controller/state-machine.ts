import type { ControllerSettings, MechanicalFailSafe, RangeSelection } from './settings.ts';
import { slipRpm } from './slip.ts';

/** The states of the controller, in the order a bad engagement goes through them. */
export const CONTROLLER_STATES = [
  'waiting',
  'engaging',
  'watching',
  'pressureRaised',
  'failSafeNeutral',
  'failSafePark',
  'failSafeDefaultGear',
] as const;
/** One of the states of the controller. */
export type ControllerState = (typeof CONTROLLER_STATES)[number];

/** Everything that can happen, for the log and for the drawn diagram. */
export type ControllerEventName =
  | 'range selected'
  | 'engagement finished'
  | 'engagement not finished'
  | 'pressure raised'
  | 'code stored'
  | 'clutch vented'
  | 'neutral commanded'
  | 'park commanded'
  | 'default gear held';

/** One line of the controller's log. */
export interface ControllerEvent {
  readonly time: number;
  readonly event: ControllerEventName;
  readonly code?: string;
  /** The slip that decided, and the limit it was held against [rpm]; only where slip decided. */
  readonly slipRpm?: number;
  readonly limitRpm?: number;
}

/** What the controller knows between two cycles. */
export interface ControllerMemory {
  readonly state: ControllerState;
  readonly selectedAt: number | null;
  readonly engagementChecked: boolean;
  /** Since when slip has been over the ratio limit [s], or null. */
  readonly slipSince: number | null;
}

/** What the controller is told in one cycle; speeds as its sensors read them [rpm], vehicle speed [m/s]. */
export interface ControllerInput {
  readonly time: number;
  readonly turbineRpm: number;
  readonly outputRpm: number;
  readonly vehicleSpeed: number;
  readonly throttle: number;
}

/** What does not change during an engagement. */
export interface ControllerContext {
  readonly settings: ControllerSettings;
  readonly rangeSelection: RangeSelection;
  readonly mechanicalFailSafe: MechanicalFailSafe;
  readonly ratio: number;
  /** Generic code for a wrong ratio in this gear: P0731 first, P0736 reverse (SAE J2012 wording). */
  readonly ratioCode: string;
}

/** The controller's memory while the vehicle stands in Park. */
export const controllerAtRest: ControllerMemory = {
  state: 'waiting',
  selectedAt: null,
  engagementChecked: false,
  slipSince: null,
};

/** A moment's tolerance on the controller's own clock, so that 0.3 s is met by thirty cycles of 10 ms. */
const CLOCK = 1e-9;

function enterFailSafe(
  memory: ControllerMemory,
  input: ControllerInput,
  context: ControllerContext,
  events: ControllerEvent[],
): ControllerMemory {
  const { time } = input;
  if (context.rangeSelection === 'mechanical' && context.mechanicalFailSafe === 'default-gear') {
    events.push({ time, event: 'default gear held' });
    return { ...memory, state: 'failSafeDefaultGear', slipSince: null };
  }
  events.push({ time, event: 'clutch vented' });
  const vented: ControllerMemory = { ...memory, state: 'failSafeNeutral', slipSince: null };
  if (context.rangeSelection === 'electronic' && input.vehicleSpeed < context.settings.parkSpeed) {
    return enterPark(vented, input, events);
  }
  events.push({ time, event: 'neutral commanded' });
  return vented;
}

function enterPark(
  memory: ControllerMemory,
  input: ControllerInput,
  events: ControllerEvent[],
): ControllerMemory {
  events.push({ time: input.time, event: 'park commanded' });
  return { ...memory, state: 'failSafePark' };
}

/**
 * One cycle of the controller: what it remembers next and what it does now.
 *
 * Equation: slip = turbine - ratio x output; engagement check |slip| > 100 rpm at 1.5 s; ratio check
 * |slip| > max(80 rpm, 3 % of turbine) for 0.3 s, first raise pressure, then code and fail-safe.
 *
 * @param memory state and timers [s]
 * @param input time [s], speeds [rpm], vehicle speed [m/s], throttle [-]
 * @param context settings, range selection, ratio [-], code [-]
 * @returns the next memory and the events of this cycle [-]
 * Range: called once a cycle with rising time.
 * Source: thresholds illustrative, common practice, no source; codes after SAE J2012 (wording from public lists).
 * @example
 * controllerCycle(rangeSelected(0.5), { time: 2, turbineRpm: 700, outputRpm: 0, vehicleSpeed: 0, throttle: 0 }, { settings: illustrativeSettings, rangeSelection: 'electronic', mechanicalFailSafe: 'neutral', ratio: 4, ratioCode: 'P0731' }).events.length // 1
 */
export function controllerCycle(
  memory: ControllerMemory,
  input: ControllerInput,
  context: ControllerContext,
): { readonly memory: ControllerMemory; readonly events: readonly ControllerEvent[] } {
  const { settings } = context;
  const events: ControllerEvent[] = [];
  if (memory.state === 'waiting' || memory.selectedAt === null) return { memory, events };
  if (memory.state === 'failSafePark' || memory.state === 'failSafeDefaultGear') {
    return { memory, events };
  }
  if (memory.state === 'failSafeNeutral') {
    const park = context.rangeSelection === 'electronic' && input.vehicleSpeed < settings.parkSpeed;
    return { memory: park ? enterPark(memory, input, events) : memory, events };
  }
  const slip = Math.abs(slipRpm(input.turbineRpm, context.ratio, input.outputRpm));
  let next = memory;
  if (
    !memory.engagementChecked &&
    input.time >= memory.selectedAt + settings.engagementTime - CLOCK
  ) {
    const failed = slip > settings.engagementSlipRpm;
    events.push({
      time: input.time,
      event: failed ? 'engagement not finished' : 'engagement finished',
      slipRpm: slip,
      limitRpm: settings.engagementSlipRpm,
    });
    const state = memory.state === 'engaging' ? 'watching' : memory.state;
    next = { ...next, engagementChecked: true, state };
  }
  const checking =
    Math.abs(input.outputRpm) > settings.movingOutputRpm ||
    input.throttle >= settings.openThrottle - CLOCK;
  const limit = Math.max(
    settings.ratioSlipRpm,
    settings.ratioSlipShare * Math.abs(input.turbineRpm),
  );
  if (!checking || slip <= limit) return { memory: { ...next, slipSince: null }, events };
  const since = next.slipSince ?? input.time;
  if (input.time - since < settings.ratioTime - CLOCK) {
    return { memory: { ...next, slipSince: since }, events };
  }
  const decided = { time: input.time, slipRpm: slip, limitRpm: limit };
  if (next.state !== 'pressureRaised') {
    events.push({ ...decided, event: 'pressure raised' });
    return { memory: { ...next, state: 'pressureRaised', slipSince: input.time }, events };
  }
  events.push({ ...decided, event: 'code stored', code: context.ratioCode });
  return { memory: enterFailSafe(next, input, context, events), events };
}

/**
 * The controller's memory from the moment a range is selected.
 *
 * @param time when it is selected [s]
 * @returns memory with the engagement check pending [-]
 * Range: any time.
 * Source: the state machine of this site, drawn on the model page.
 * @example
 * rangeSelected(0.5).selectedAt // 0.5
 */
export function rangeSelected(time: number): ControllerMemory {
  return { ...controllerAtRest, state: 'engaging', selectedAt: time };
}
