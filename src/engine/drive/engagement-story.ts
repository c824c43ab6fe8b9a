/** What the driver does, in time; the same for every engagement so that two can be laid over each other. */
export interface EngagementStory {
  /** Range selected [s]. */
  readonly select: number;
  /** Brake released [s]; the throttle begins to open at the same moment. */
  readonly brakeOff: number;
  /** Throttle opens at this rate [1/s], up to this much [-]. */
  readonly throttleRate: number;
  readonly throttleMost: number;
  readonly end: number;
}

/** The story every simulation of an engagement tells; invented. */
export const trainingStory: EngagementStory = {
  select: 0.5,
  brakeOff: 3,
  throttleRate: 0.2,
  throttleMost: 0.6,
  end: 7,
};

/** Slip speed scale of the regularised dry-friction law tanh(slip / scale) [rad/s]. */
export const SLIP_SCALE = 2;
/** A turbine slower than this counts as stopped [rpm]; slip below the second as engaged [rpm]. */
export const STOPPED_RPM = 50;
/** Slip below this counts as engaged [rpm]: above the creep of the regularised law, 17 rpm at most here. */
export const ENGAGED_SLIP_RPM = 50;

/**
 * Throttle at a time of the story; after its end the driver has lifted off.
 *
 * @param story brakeOff and end [s], throttleRate [1/s], throttleMost [-]
 * @param time [s]
 * @returns throttle, 0 closed to 1 open [-]
 * Range: any time.
 * Source: the story of this site, invented.
 * @example
 * throttleAt(trainingStory, 4) // 0.2
 */
export function throttleAt(story: EngagementStory, time: number): number {
  if (time > story.end) return 0;
  return Math.min(story.throttleMost, Math.max(0, story.throttleRate * (time - story.brakeOff)));
}

/**
 * The time from which the throttle stands as wide open as it will.
 *
 * @param story brakeOff [s], throttleRate [1/s], throttleMost [-]
 * @returns time [s]
 * Range: throttleRate above zero.
 * Source: the story of this site, invented.
 * @example
 * throttleFullAt(trainingStory) // 6
 */
export function throttleFullAt(story: EngagementStory): number {
  return story.brakeOff + story.throttleMost / story.throttleRate;
}

/**
 * How fast the throttle opens from a time on.
 *
 * @param story brakeOff and end [s], throttleRate [1/s], throttleMost [-]
 * @param time [s]
 * @returns rate [1/s]; zero but while it opens
 * Range: any time; at a corner, what holds after it.
 * Source: throttleAt, differentiated.
 * @example
 * throttleRateAt(trainingStory, 4) // 0.2
 */
export function throttleRateAt(story: EngagementStory, time: number): number {
  const opens = time >= story.brakeOff && time < Math.min(throttleFullAt(story), story.end);
  return opens ? story.throttleRate : 0;
}
