/** The controller's states, as the strip under a trace names them: apart, since few pages draw one. */
import type { ControllerState } from '../../engine/index.ts';

export const words: Record<ControllerState, string> = {
  waiting: 'in Park',
  engaging: 'waits for the turbine',
  watching: 'watches slip',
  pressureRaised: 'pressure raised',
  failSafeNeutral: 'fail-safe: Neutral',
  failSafePark: 'fail-safe: Park',
  failSafeDefaultGear: 'fail-safe: one gear held',
};
