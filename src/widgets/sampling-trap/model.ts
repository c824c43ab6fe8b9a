import { computed, signal } from '@preact/signals';
import { LIVE_CARS, standsAfter, turbineAt, type LiveCar } from '../../car/live-cars.ts';
import { readingsEach } from '../../car/sampling.ts';
import { withoutRows } from '../../log/dropouts.ts';
import { findSelections } from '../../log/selections.ts';
import { stopTime } from '../../log/stop-time.ts';
import { comesBack, sameRows, selectedAt, taken, type Taking } from '../../log/taken.ts';
import { givensFrom } from '../../simulation/givens.ts';
import type { SimModel } from '../../simulation/sim-spec.ts';

/** What may stand on the list. */
export const ITEMS = [
  'range',
  'turbine',
  'temperature',
  'output',
  'command',
  'engine',
  'throttle',
  'brake',
  'gear',
  'voltage',
] as const;
export type Item = (typeof ITEMS)[number];

export type TrapGivens = Record<Item, boolean> & {
  /** Values that the line brings in all [1/s]. */
  line: number;
  car: LiveCar;
  /** How much of an interval has gone by when Drive is selected [%]. */
  late: number;
  /** Whether the picture shows what the turbine did between the readings. */
  truth: boolean;
};

export const listOf = (...on: readonly Item[]): Record<Item, boolean> =>
  Object.fromEntries(ITEMS.map((item) => [item, on.includes(item)])) as Record<Item, boolean>;
export const ALL = listOf(...ITEMS);
export const START: TrapGivens = { ...ALL, line: 20, car: 'hot', late: 90, truth: true };

/** Stretch of the log that is shown [s]: the engagement, or the take-off where the clutch shudders. */
export const ENGAGEMENT = [0, 3] as const;
export const TAKE_OFF = [4, 6] as const;

/** A log of nothing, where nothing or no turbine is on the list. */
const NOTHING: readonly number[] = [];

export function makeModel() {
  const { givens, apply, reset } = givensFrom(START);
  const on = computed(() => ITEMS.filter((item) => givens[item].value));
  /** Of each item [1/s]. */
  const rate = computed(() => readingsEach(givens.line.value, on.value.length));
  const window = computed(() => (givens.car.value === 'shudder' ? TAKE_OFF : ENGAGEMENT));
  const taking = computed((): Taking => ({
    car: givens.car.value,
    interval: 1 / rate.value,
    late: givens.late.value / 100,
    lasts: window.value[1],
    range: givens.range.value,
  }));
  /** The log that the list makes; null where it has no turbine. */
  const log = computed(() => (givens.turbine.value ? taken(taking.value) : null));
  /** Rows in which the sensor dropped out, as far as the log shows it. */
  const dropouts = computed(() =>
    log.value && window.value === ENGAGEMENT ? comesBack(log.value) : NOTHING,
  );
  /** What the log reader makes of it; null where it says nothing, because nobody knows when Drive was selected. */
  const stop = computed(() => {
    if (!log.value || !givens.range.value) return null;
    const turbine = withoutRows(log.value.turbine, dropouts.value);
    const [selection] = findSelections(log.value, turbine);
    return selection ? { selection, ...stopTime(log.value, turbine, selection) } : null;
  });
  return {
    givens,
    apply,
    reset,
    cursor: signal<number | null>(null),
    on,
    rate,
    window,
    log,
    dropouts,
    stop,
    times: computed(() => (log.value ? Array.from(log.value.time) : NOTHING)),
    selected: computed(() => selectedAt(taking.value)),
    /** Cars that could have written these rows, each with a moment of selection that fits [parts of an interval]. */
    fits: computed(() =>
      LIVE_CARS.flatMap((car) => {
        if (!log.value) return [];
        const late = sameRows(log.value, taking.value, car);
        const middle = late[Math.floor(late.length / 2)];
        if (car === givens.car.value) return [{ car, late: taking.value.late }];
        return middle === undefined ? [] : [{ car, late: middle }];
      }),
    ),
    /** Where another moment of selection would begin, in the time of the log [s]. */
    selectedFor: (late: number): number => selectedAt({ ...taking.value, late }),
    turbineAt,
    standsAfter,
  } satisfies SimModel<TrapGivens> & Record<string, unknown>;
}
export type TrapModel = ReturnType<typeof makeModel>;
