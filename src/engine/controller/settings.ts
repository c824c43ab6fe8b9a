/** What a shop can choose or have: how the range is selected and what fail-safe does. */
export type RangeSelection = 'electronic' | 'mechanical';
/** With mechanical selection some controllers vent to Neutral, some hold one gear at full pressure. */
export type MechanicalFailSafe = 'neutral' | 'default-gear';

/** Thresholds and timers as data. Illustrative: makers' limits differ and are not published in the open. */
export interface ControllerSettings {
  /** Controller cycle [s]. */
  readonly sample: number;
  /** Engagement check: slip above this [rpm] at this time after selection [s]. */
  readonly engagementSlipRpm: number;
  readonly engagementTime: number;
  /** Ratio check: slip above the larger of these [rpm], [share of turbine speed] for this long [s]. */
  readonly ratioSlipRpm: number;
  readonly ratioSlipShare: number;
  readonly ratioTime: number;
  /** What the clutch command is multiplied by after the first failed check; the line keeps its lead over it. */
  readonly pressureRaise: number;
  /** The ratio check runs when the output turns faster [rpm] or the throttle is open further [-]. */
  readonly movingOutputRpm: number;
  readonly openThrottle: number;
  /** The park pawl may drop in below this speed [m/s]. */
  readonly parkSpeed: number;
}

/** The limits of the training transmission; illustrative, no maker's. */
export const illustrativeSettings: ControllerSettings = {
  sample: 0.01,
  engagementSlipRpm: 100,
  engagementTime: 1.5,
  ratioSlipRpm: 80,
  ratioSlipShare: 0.03,
  ratioTime: 0.3,
  pressureRaise: 1.3,
  movingOutputRpm: 20,
  openThrottle: 0.02,
  parkSpeed: 5 / 3.6,
};
