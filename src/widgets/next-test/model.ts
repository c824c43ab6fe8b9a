import { signal } from '@preact/signals';
import type { TakenReading } from '../../diagnosis/index.ts';
import { makePlanner } from '../../planner/model.ts';

/** The readings of one car, kept as long as the page is in the history of its tab. */
export function makeModel(rank?: Parameters<typeof makePlanner>[1]) {
  const readings = signal<readonly TakenReading[]>([]);
  return {
    ...makePlanner(readings, rank),
    readings,
    add: (reading: TakenReading) => {
      readings.value = [...readings.value, reading];
    },
    remove: (place: number) => {
      readings.value = readings.value.filter((_one, i) => i !== place);
    },
    clear: () => {
      readings.value = [];
    },
  };
}
export type NextTestModel = ReturnType<typeof makeModel>;
