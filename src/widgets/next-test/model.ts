import { signal } from '@preact/signals';
import type { TakenReading } from '../../diagnosis/index.ts';
import { makePlanner } from '../../planner/model.ts';
import type { Think } from '../../planner/messages.ts';

interface Gone {
  /** Null: all of them. */
  readonly one: TakenReading | null;
  /** The readings as they stood. */
  readonly before: readonly TakenReading[];
}

/** The readings of one car, kept as long as the page is in the history of its tab. */
export function makeModel(think?: Think) {
  const readings = signal<readonly TakenReading[]>([]);
  const gone = signal<Gone | null>(null);
  const takeOut = (one: TakenReading | null, left: readonly TakenReading[]): void => {
    gone.value = { one, before: readings.peek() };
    readings.value = left;
  };
  return {
    ...makePlanner(readings, think),
    readings,
    /** What was taken out last, until another reading is added. */
    gone,
    add: (reading: TakenReading) => {
      readings.value = [...readings.value, reading];
      gone.value = null;
    },
    remove: (place: number) => {
      const all = readings.peek();
      takeOut(
        all[place] ?? null,
        all.filter((_one, i) => i !== place),
      );
    },
    clear: () => takeOut(null, []),
    putBack: () => {
      readings.value = gone.peek()?.before ?? readings.peek();
      gone.value = null;
    },
  };
}
export type NextTestModel = ReturnType<typeof makeModel>;
