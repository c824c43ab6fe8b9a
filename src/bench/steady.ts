import {
  applyFaults,
  faultSeverity,
  fluidClasses,
  makeFluid,
  revPerSecond,
  solveSteady,
  training,
} from '../engine/index.ts';
import { timed, type Row } from './row.ts';

const TEMPS = Array.from({ length: 60 }, (_, i) => -30 + (i * 170) / 59);
const CRACKS_MM = [0.05, 0.1, 0.16, 0.25, 0.4];
/** Rounds thrown away, so that what is timed is the compiled code a page runs after its first drag. */
const WARM_UP = 40;
const ROUNDS = 400;

const fluid = makeFluid(fluidClasses['low-viscosity']);
const { engineRpm, line, clutch } = training.testPoints.idle;
const plants = CRACKS_MM.map((mm) =>
  applyFaults(training, { transferSeal: { severity: faultSeverity('transferSeal', mm) } }),
);
const solve = (plant: (typeof plants)[number], tempC: number): number =>
  solveSteady({
    plant,
    fluid,
    tempC,
    engineSpeed: revPerSecond(engineRpm),
    lineCommand: line,
    clutchCommand: clutch,
    applied: ['forward'],
  }).linePressure;

/** Idle in gear: at the hot end the pump falls short, so both kinds of solve are in the mix. */
export function benchSteady(): readonly Row[] {
  const solves: number[] = [];
  const sweeps: number[] = [];
  let kept = 0;
  for (let round = 0; round < WARM_UP + ROUNDS; round += 1) {
    const count = round >= WARM_UP;
    const begun = performance.now();
    for (const plant of plants) for (const tempC of TEMPS) kept += solve(plant, tempC);
    if (count) sweeps.push(performance.now() - begun);
    // One solve is too short for the clock: ten of the same state, a different state each round.
    const plant = plants[round % plants.length];
    const tempC = TEMPS[(round * 7) % TEMPS.length];
    if (plant === undefined || tempC === undefined) continue;
    const from = performance.now();
    for (let i = 0; i < 10; i += 1) kept += solve(plant, tempC);
    if (count) solves.push((performance.now() - from) * 100);
  }
  if (!Number.isFinite(kept)) throw new Error('A solve gave no number.');
  return [
    timed('one steady solve', solves, 'us', { at: 'p95', most: 20 }),
    timed('60 temperatures, five cracks', sweeps, 'ms', { at: 'p95', most: 6 }),
  ];
}
