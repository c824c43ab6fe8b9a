import type { Circuit } from '../engine/index.ts';
import type { Reading } from './readings.ts';

/** Where the fluid goes when one circuit is looked at [L/min]: what the drawing of that circuit shows. */
export function circuitFlows(reading: Reading, circuit: Circuit) {
  const { feedLmin, leaksLmin } = reading.clutches[circuit];
  return {
    pump: reading.pumpLmin,
    clearances: reading.clearancesLmin,
    feed: feedLmin,
    rings: leaksLmin.rings,
    crack: leaksLmin.transferSeal,
    leftOver: reading.leftOverLmin,
  };
}
