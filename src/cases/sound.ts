/** What a sound car of a kind reads, as the maker's data and a shop's own notes have it: without it no reading can be judged. */
import { nominalReader, offScale, type NumericTest } from '../diagnosis/index.ts';
import type { Plant } from '../engine/index.ts';

/** What a test reads on a sound car, in shop units; worked out when it is asked for. */
export function soundReader(plant: Plant): (test: NumericTest) => number {
  const nominal = nominalReader(plant);
  return (test) => offScale(test, nominal(test.id));
}
