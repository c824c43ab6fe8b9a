import { estimateLeak, type LeakEstimate, type TakenReading } from '../diagnosis/index.ts';
import { training, type Plant } from '../engine/index.ts';

export { LeakMap } from './LeakMap.tsx';

/** Fetched when somebody asks for the size of the crack: it solves the circuit some ten thousand times. */
export const leakOf = (
  readings: readonly TakenReading[],
  plant: Plant = training,
): LeakEstimate | null => estimateLeak(plant, readings);
