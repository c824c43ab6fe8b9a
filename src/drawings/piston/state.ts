import { words } from './words.en.ts';

export interface PistonSpringState {
  /** Share of 1000 kPa. */
  pressure: number;
  /** Newtons: pressure times area, what the spring takes, what is left for the plates. */
  force: { oil: number; spring: number; net: number };
  /** Newtons at which an arrow has its full length; what 1200 kPa gives on the training clutch where left out. */
  fullForce?: number | undefined;
  /** `short` is how much the oil lacks to beat the spring, in the reader's units. */
  labels: {
    pressure: string;
    area: string;
    oil: string;
    spring: string;
    net: string;
    short?: string | undefined;
  };
}

export const pistonSpringExample: PistonSpringState = {
  pressure: 0.4,
  force: { oil: 3400, spring: 900, net: 2500 },
  labels: { pressure: '400 kPa', area: '85 cm²', oil: '3400 N', spring: '900 N', net: '2500 N' },
};

export const describePistonSpring = ({ force, labels }: PistonSpringState): string =>
  force.net > 0 ? words.describe.wins(labels) : words.describe.loses(labels);
