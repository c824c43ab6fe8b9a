/** Cars in the bay, behind numbers: what each has, and how far gone it is. */
import type { Name } from '../diagnosis/hypotheses.ts';
import type { BayKey } from './bay-tests.ts';

export interface BayCar {
  /** A fault of one clutch sits in the forward clutch: the customer named Drive. */
  readonly name: Name;
  readonly severity: number;
  /** Where the cause is not in the list: what reads otherwise than on a sound car, by its place among what a test can say. */
  readonly byHand?: Readonly<Partial<Record<BayKey, number>>>;
}

/** By their number, from 1. The first is the car of the course; in the seventh a one-way clutch of first gear lets go hot. */
export const BAY_CARS: readonly BayCar[] = [
  { name: 'transferSeal', severity: 0.625 },
  { name: 'turbineSensor', severity: 1 },
  { name: 'regulatorBore', severity: 0.8 },
  { name: 'clutchControl', severity: 0.7 },
  { name: 'frictionWear', severity: 0.7 },
  { name: 'healthy', severity: 1 },
  { name: 'unlisted', severity: 1, byHand: { codes: 1, hotDrive: 2 } },
  { name: 'pistonSeal', severity: 0.7 },
  { name: 'feedRestriction', severity: 0.6 },
  { name: 'lowFluid', severity: 0.8 },
];
