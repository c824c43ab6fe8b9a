import {
  controllerCycle,
  illustrativeSettings,
  rangeSelected,
  training,
  type ControllerMemory,
  type ControllerState,
  type MechanicalFailSafe,
  type RangeSelection,
} from '../engine/index.ts';

/**
 * Where the engine's controller ends once slip has outlasted both ratio checks, at a vehicle speed [m/s]: what a shop
 * calls the fail-safe of that way of selecting a range.
 */
export function failSafeOf(
  rangeSelection: RangeSelection,
  mechanicalFailSafe: MechanicalFailSafe,
  vehicleSpeed: number,
): ControllerState {
  const ratio = training.drive.ratios.forward;
  const { movingOutputRpm, openThrottle, ratioSlipRpm, sample } = illustrativeSettings;
  const outputRpm = vehicleSpeed > 0 ? 2 * movingOutputRpm : 0;
  let memory: ControllerMemory = rangeSelected(0);
  // Two checks of 0.3 s and the engagement check: three seconds hold them all.
  for (let cycle = 1; cycle * sample <= 3; cycle += 1) {
    const input = {
      time: cycle * sample,
      turbineRpm: ratio * outputRpm + 8 * ratioSlipRpm,
      outputRpm,
      vehicleSpeed,
      throttle: openThrottle,
    };
    memory = controllerCycle(memory, input, {
      settings: illustrativeSettings,
      rangeSelection,
      mechanicalFailSafe,
      ratio,
      ratioCode: 'P0731',
    }).memory;
  }
  return memory.state;
}

/** The pawl may drop in below this speed [km/h]. */
export const PARK_BELOW_KMH = illustrativeSettings.parkSpeed * 3.6;
