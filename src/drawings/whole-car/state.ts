import type { Temp } from '../scale.ts';
import { words } from './words.en.ts';

/** Where in the car a fault sits, as the drawing has places. */
export type FaultPlace =
  | 'sump'
  | 'suction'
  | 'pump'
  | 'regulator'
  | 'feed'
  | 'seal'
  | 'riser'
  | 'piston'
  | 'plates'
  | 'turbine';

export type Grip = 'released' | 'slips' | 'holds';

/** The whole car at one moment. */
export interface WholeCarState {
  readonly temp: Temp;
  /** Turns since the start, of the real thing; the drawing slows them down. */
  readonly turns: { readonly engine: number; readonly turbine: number; readonly wheels: number };
  /** Through the feed hole, and out of the leak, since the start [L]. */
  readonly fedL: number;
  readonly leakedL: number;
  /** What leaks now [L/min]: the width of the drip. */
  readonly leakLmin: number;
  /** Shares of 1000 kPa. */
  readonly pressures: { readonly line: number; readonly clutch: number; readonly wanted: number };
  readonly grip: Grip;
  readonly parked: boolean;
  /** What the controller is doing, in the reader's words, and whether it has given up. */
  readonly controller: string;
  readonly failSafe: boolean;
  readonly fault: FaultPlace | null;
  /** All of it already in the reader's units. */
  readonly printed: {
    readonly fluid: string;
    readonly engine: string;
    readonly turbine: string;
    readonly wheels: string;
    readonly line: string;
    readonly clutch: string;
    readonly wanted: string;
    readonly leak: string;
  };
}

export const describeWholeCar = ({ printed, grip, controller }: WholeCarState): string =>
  words.describe({ ...printed, grip: words.does[grip], controller });

/** Standing in Drive with a sound seal. */
export const wholeCarExample: WholeCarState = {
  temp: 'cold',
  turns: { engine: 23, turbine: 12, wheels: 0 },
  fedL: 0.06,
  leakedL: 0.01,
  leakLmin: 0.2,
  pressures: { line: 0.5, clutch: 0.24, wanted: 0.25 },
  grip: 'holds',
  parked: false,
  controller: words.example,
  failSafe: false,
  fault: null,
  printed: {
    fluid: '20 °C',
    engine: '700 rpm',
    turbine: '7 rpm',
    wheels: '0 km/h',
    line: '500 kPa',
    clutch: '240 kPa',
    wanted: '250 kPa',
    leak: '0.2 L/min',
  },
};
