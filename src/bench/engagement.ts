import {
  applyFaults,
  faultSeverity,
  fluidClasses,
  makeFluid,
  solveEngagement,
  training,
} from '../engine/index.ts';
import { timed, type Row } from './row.ts';

const WARM_UP = 20;
const ROUNDS = 200;

/** One whole engagement of 7 s, hot and with a crack, which is the case with the most events. */
export function benchEngagement(): readonly Row[] {
  const request = {
    plant: applyFaults(training, {
      transferSeal: { severity: faultSeverity('transferSeal', 0.25) },
    }),
    fluid: makeFluid(fluidClasses['low-viscosity']),
    tempC: 100,
    rangeSelection: 'electronic',
    range: 'drive',
  } as const;
  const samples: number[] = [];
  for (let round = 0; round < WARM_UP + ROUNDS; round += 1) {
    const begun = performance.now();
    solveEngagement(request);
    if (round >= WARM_UP) samples.push(performance.now() - begun);
  }
  return [timed('one engagement of 7 s, hot, 0.25 mm', samples, 'ms', { at: 'p50', most: 2 })];
}
