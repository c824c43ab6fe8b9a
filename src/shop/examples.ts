/** The parts and the shelf that the course reckons with. All of it is invented, and the pages say so. */
import type { OpenPart } from './comeback.ts';

/** A filter that lies open beside the transfer seal. */
export const FILTER: OpenPart = {
  accessH: 6,
  extraH: 0.1,
  price: 10,
  hourRate: 100,
  beside: 0,
  left: 0.08,
  renewed: 0.02,
};
/** A set of solenoids that lies open there as well. */
export const SOLENOIDS: OpenPart = { ...FILTER, price: 100 };
/** How many cars a shop does in the examples [-]. */
export const CARS = 20;
/** The seal on the shelf: its use [1/year], its wait [d] and its price [money]. */
export const SEAL = { aYear: 26, days: 14, price: 12 };
