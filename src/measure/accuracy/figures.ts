/** What `npm run accuracy` keeps, as far as the page shows it. Shares are 0 to 1. */
export interface Bin {
  readonly from: number;
  readonly to: number;
  readonly cars: number;
  readonly said: number;
  readonly right: number;
}
export interface Figures {
  readonly command: string;
  readonly seeds: readonly number[];
  readonly oneFault: {
    readonly cars: number;
    readonly rightFirst: number;
    readonly rightWithinTwo: number;
    readonly calibrationError: number;
    readonly reached90: number;
    readonly unlistedAccused: number;
    readonly rightFirstAllReadings: number;
    readonly falseAlarmNoSingleFault: number;
    readonly falsePair: number;
    readonly readings: number;
    readonly minutes: number;
    readonly minutesFixedOrder: number;
    readonly minutesRandomOrder: number;
    readonly minutesRatio: number;
    readonly reliability: readonly Bin[];
    readonly bySeed: readonly {
      readonly seed: number;
      readonly rightFirst: number;
      readonly rightWithinTwo: number;
      readonly calibrationError: number;
      readonly minutesRatio: number;
    }[];
  };
  readonly twoFaults: {
    readonly cars: number;
    readonly oneOnTop: number;
    readonly oneOnTopAllReadings: number;
    readonly bothNamedAllReadings: number;
    readonly noSingleFaultFits: number;
  };
  readonly unlisted: {
    readonly cars: number;
    readonly onTopAllReadings: number;
    readonly onTop: number;
    readonly listedAccused: number;
  };
  readonly healthy: {
    readonly cars: number;
    readonly listedAccused: number;
    readonly healthyOnTop: number;
  };
  readonly leak: readonly {
    readonly taps: readonly string[];
    readonly cars: number;
    readonly held: number;
  }[];
}
