import { estimateLeak, type LeakEstimate, type TakenReading } from '../diagnosis/index.ts';
import type { Plant } from '../engine/index.ts';

export { LeakMap } from './LeakMap.tsx';

/** Fetched when somebody asks for the size of the crack: it solves the circuit some ten thousand times. */
export const leakOf = (readings: readonly TakenReading[], plant: Plant): LeakEstimate | null =>
  estimateLeak(plant, readings);
