/** Ten complaints: what each can be, and four checks with what they say to it. Words only but for the readings (common practice, no source). */

/** A check: its minutes [min], and who gives which answer; whoever is in no group gives the last one. */
export interface Check {
  readonly minutes: number;
  readonly parts: readonly (readonly string[])[];
}
export interface Complaint {
  readonly causes: readonly string[];
  readonly checks: Readonly<Record<string, Check>>;
}

export const COMPLAINTS = {
  lateCold: {
    causes: ['drainBack', 'hardLip', 'frost', 'lowLevel', 'filter'],
    checks: {
      twice: { minutes: 5, parts: [['drainBack']] },
      reverse: { minutes: 10, parts: [['hardLip']] },
      sister: { minutes: 20, parts: [['hardLip', 'lowLevel', 'filter']] },
      level: { minutes: 30, parts: [['lowLevel']] },
    },
  },
  harsh: {
    causes: ['idleHigh', 'learnLost', 'noCurrent', 'stuckValve', 'play'],
    checks: {
      idle: { minutes: 5, parts: [['idleHigh']] },
      learned: { minutes: 10, parts: [['learnLost']] },
      current: { minutes: 20, parts: [['noCurrent']] },
      line: { minutes: 45, parts: [['noCurrent', 'stuckValve']] },
    },
  },
  flare: {
    causes: ['comingLeak', 'accumulator', 'comingPlates', 'goingEarly', 'falseSpeed'],
    checks: {
      learned: { minutes: 10, parts: [['comingLeak', 'accumulator', 'comingPlates']] },
      speeds: { minutes: 15, parts: [['falseSpeed']] },
      warmth: { minutes: 30, parts: [['comingLeak', 'accumulator']] },
      taps: { minutes: 60, parts: [['comingLeak', 'accumulator'], ['goingEarly']] },
    },
  },
  shudder: {
    causes: ['misfire', 'fluid', 'lining', 'tire', 'mount'],
    checks: {
      misfire: { minutes: 10, parts: [['misfire']] },
      gear: { minutes: 10, parts: [['tire']] },
      unlocked: { minutes: 15, parts: [['fluid', 'lining']] },
      fluid: { minutes: 90, parts: [['fluid']] },
    },
  },
  noReverse: {
    causes: ['range', 'boost', 'leak', 'valve', 'pack'],
    checks: {
      range: { minutes: 10, parts: [['range']] },
      line: { minutes: 45, parts: [['range', 'boost']] },
      tap: { minutes: 60, parts: [['pack'], ['boost']] },
      air: { minutes: 180, parts: [['leak']] },
    },
  },
  oneGear: {
    causes: ['seal', 'rings', 'valve', 'hole', 'plates'],
    checks: {
      reverse: { minutes: 10, parts: [['seal']] },
      solenoid: { minutes: 60, parts: [['valve']] },
      line: { minutes: 45, parts: [] },
      tap: { minutes: 75, parts: [['plates'], ['hole']] },
    },
  },
  hot: {
    causes: ['falseTemp', 'cooler', 'neverLocks', 'seal', 'load'],
    checks: {
      hand: { minutes: 10, parts: [['falseTemp']] },
      flow: { minutes: 15, parts: [['cooler']] },
      log: { minutes: 20, parts: [['neverLocks'], ['seal']] },
      light: { minutes: 45, parts: [['load']] },
    },
  },
  whine: {
    causes: ['bearing', 'belt', 'lowLevel', 'filter', 'pump'],
    checks: {
      park: { minutes: 5, parts: [['bearing']] },
      listen: { minutes: 10, parts: [['belt']] },
      line: { minutes: 20, parts: [['pump']] },
      level: { minutes: 30, parts: [['lowLevel']] },
    },
  },
  stuck: {
    causes: ['supply', 'ground', 'plug', 'range', 'seal'],
    checks: {
      codes: { minutes: 10, parts: [['supply', 'ground'], ['plug'], ['range']] },
      supply: { minutes: 20, parts: [['supply']] },
      ground: { minutes: 10, parts: [['ground']] },
      plug: { minutes: 20, parts: [['plug']] },
    },
  },
  code: {
    causes: ['battery', 'floor', 'dropout', 'wheel', 'seal'],
    checks: {
      frame: { minutes: 10, parts: [['battery']] },
      stand: { minutes: 10, parts: [['floor']] },
      harness: { minutes: 20, parts: [['dropout']] },
      gears: { minutes: 45, parts: [['wheel'], ['dropout'], ['seal']] },
    },
  },
} as const satisfies Record<string, Complaint>;

export type ComplaintId = keyof typeof COMPLAINTS;
export const COMPLAINT_IDS = Object.keys(COMPLAINTS) as readonly ComplaintId[];
/** So many causes has each, and so many checks. */
export const CAUSES = 5;
export const CHECKS = 4;

export const complaintOf = (id: ComplaintId): Complaint => COMPLAINTS[id];
