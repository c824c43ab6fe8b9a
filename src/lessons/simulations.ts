/**
 * The simulations by the tags that lessons write: the id that stands on the page, and how many guided tasks each has, which
 * its time is told by. As data, because the check of the content runs without a screen; tests/lessons/simulations.test.ts
 * holds it against the simulations themselves.
 */
export interface Simulation {
  readonly id: string;
  readonly tasks: number;
}

export const simulations: Readonly<Record<string, Simulation>> = {
  AskFirst: { id: 'ask-first', tasks: 3 },
  BenchAir: { id: 'bench-air', tasks: 3 },
  BeforeAndAfter: { id: 'before-and-after', tasks: 3 },
  ClutchPressure: { id: 'clutch-pressure', tasks: 4 },
  ControllerSees: { id: 'controller-sees', tasks: 4 },
  Engagement: { id: 'engagement', tasks: 4 },
  Fluid: { id: 'fluid', tasks: 3 },
  FreezeFrame: { id: 'freeze-frame', tasks: 3 },
  GapOrHole: { id: 'gap-or-hole', tasks: 4 },
  GaugeBench: { id: 'gauge-bench', tasks: 3 },
  HeatAndAir: { id: 'heat-and-air', tasks: 3 },
  HoldingTorque: { id: 'holding-torque', tasks: 4 },
  JobCard: { id: 'job-card', tasks: 3 },
  LevelWindow: { id: 'level-window', tasks: 3 },
  NowOrTwice: { id: 'now-or-twice', tasks: 3 },
  SamplingTrap: { id: 'sampling-trap', tasks: 3 },
  StallTorque: { id: 'stall-torque', tasks: 3 },
  StockOrOrder: { id: 'stock-or-order', tasks: 3 },
  TwoSeals: { id: 'two-seals', tasks: 3 },
  TwoFilters: { id: 'two-filters', tasks: 3 },
  TestOrder: { id: 'test-order', tasks: 3 },
  ThreeChecks: { id: 'three-checks', tasks: 3 },
  TwoWays: { id: 'two-ways', tasks: 4 },
  WarmUpDrive: { id: 'warm-up', tasks: 4 },
  WhichRanges: { id: 'which-ranges', tasks: 4 },
  WhoGoesHungry: { id: 'who-goes-hungry', tasks: 4 },
  WholeCar: { id: 'whole-car', tasks: 3 },
};
