import { signal } from '@preact/signals';
import type { TakenReading } from '../../diagnosis/index.ts';
import { makePlanner } from '../../planner/model.ts';
import type { Think } from '../../planner/messages.ts';

/** The readings of one car, kept as long as the page is in the history of its tab. */
export function makeModel(think?: Think) {
  const readings = signal<readonly TakenReading[]>([]);
  return {
    ...makePlanner(readings, think),
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
