/** What a practice case is made of, by id; the words for each stand with the page. */

/** What a customer can be asked, in the order of a good intake. */
export const QUESTIONS = [
  'ranges',
  'minutes',
  'stood',
  'weather',
  'load',
  'restart',
  'onset',
  'lastWork',
  'lights',
] as const;
export type Question = (typeof QUESTIONS)[number];

/** What can be looked at besides the planner's tests; what is not said in a case is as it should be. */
export const LOOKS = [
  'standing',
  'window',
  'longDrive',
  'idle',
  'learned',
  'connector',
  'supply',
  'frame',
  'unlocked',
  'strategy',
] as const;
export type Look = (typeof LOOKS)[number];

/** Causes that the planner's list does not have. */
export const OUTSIDE = [
  'lowReversePack',
  'drainBack',
  'overfull',
  'filterPackedWithLining',
  'lostLearning',
  'openLineSolenoid',
  'lowSupply',
  'converterClutch',
  'accumulatorSeal',
  'coolerBlocked',
  'boostLost',
] as const;
export type Outside = (typeof OUTSIDE)[number];

/** What a repair plan can hold. */
export const REPAIRS = [
  'transferSeal',
  'sealingRings',
  'pistonSeal',
  'packs',
  'clutchSolenoid',
  'openPort',
  'cable',
  'pump',
  'bore',
  'boostValve',
  'pressureControl',
  'accumulator',
  'checkValve',
  'filterFluid',
  'rightFluid',
  'drainToMark',
  'levelAndLeak',
  'coolerFlow',
  'coolerFlush',
  'connectorSleeve',
  'supply',
  'turbineSensor',
  'relearn',
  'none',
] as const;
export type Repair = (typeof REPAIRS)[number];
