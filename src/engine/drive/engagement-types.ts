import type { ControllerEventName, ControllerState } from '../controller/state-machine.ts';
import type { SpeedSensor } from '../controller/sensor.ts';
import type {
  ControllerSettings,
  MechanicalFailSafe,
  RangeSelection,
} from '../controller/settings.ts';
import type { Fluid } from '../fluid/fluid.ts';
import type { Plant } from '../transmission/plant.ts';
import type { Work } from '../numerics/rosenbrock.ts';
import type { EngagementStory } from './engagement-story.ts';

/** The ranges in which a clutch must take hold. */
export type DriveRange = 'drive' | 'reverse';

/** What an engagement is solved for. */
export interface EngagementRequest {
  readonly plant: Plant;
  readonly fluid: Fluid;
  readonly tempC: number;
  readonly range: DriveRange;
  readonly rangeSelection: RangeSelection;
  readonly mechanicalFailSafe?: MechanicalFailSafe;
  readonly settings?: ControllerSettings;
  readonly sensor?: SpeedSensor;
  readonly story?: EngagementStory;
  /** Time between points of the trace [s]; it changes the picture, not the solution. */
  readonly outputStep?: number;
}

/** What the log can say: the controller's events and the milestones of the clutch. */
export type EngagementEventName =
  ControllerEventName | 'clutch filled' | 'turbine stopped' | 'brake released';

/** One line of the log: when [s], what, the code if one was stored, and the slip [rpm] where that decided. */
export interface EngagementEvent {
  readonly time: number;
  readonly event: EngagementEventName;
  readonly code?: string;
  readonly slipRpm?: number;
  readonly limitRpm?: number;
}

/** One row for each output time; speeds [rad/s] unless named, pressures [Pa], torques [N m]. */
export interface EngagementTrace {
  readonly time: Float64Array;
  readonly engineRpm: Float64Array;
  readonly turbineRpm: Float64Array;
  readonly outputRpm: Float64Array;
  readonly vehicleSpeed: Float64Array;
  readonly slipRpm: Float64Array;
  readonly clutchPressure: Float64Array;
  readonly clutchCommand: Float64Array;
  readonly linePressure: Float64Array;
  readonly capacity: Float64Array;
  readonly clutchTorque: Float64Array;
  readonly impellerTorque: Float64Array;
  readonly turbineTorque: Float64Array;
  readonly engineTorque: Float64Array;
  readonly throttle: Float64Array;
  /** What the controller's turbine sensor says [rpm]. */
  readonly turbineSeenRpm: Float64Array;
}

/** A solved engagement: trace, log, controller states, and how the solve went. */
export interface Engagement {
  readonly trace: EngagementTrace;
  /** In order of time; with electronic selection Park may come after the trace, once the vehicle is slow enough. */
  readonly events: readonly EngagementEvent[];
  /** The controller's state through time: each entry holds from its time on. */
  readonly states: readonly { readonly time: number; readonly state: ControllerState }[];
  /** Time after selection when the turbine first stood, and when slip was first gone [s]; null if never. */
  readonly stoppedAfter: number | null;
  readonly engagedAfter: number | null;
  readonly status: { readonly converged: boolean; readonly work: Work };
}

/** The columns of a trace, in the order they are made. */
export const TRACE_COLUMNS = [
  'time',
  'engineRpm',
  'turbineRpm',
  'outputRpm',
  'vehicleSpeed',
  'slipRpm',
  'clutchPressure',
  'clutchCommand',
  'linePressure',
  'capacity',
  'clutchTorque',
  'impellerTorque',
  'turbineTorque',
  'engineTorque',
  'throttle',
  'turbineSeenRpm',
] as const satisfies readonly (keyof EngagementTrace)[];
