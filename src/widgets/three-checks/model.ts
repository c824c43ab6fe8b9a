import { computed } from '@preact/signals';
import {
  CHECKS,
  COMPLAINT_IDS,
  complaintOf,
  type Check,
  type ComplaintId,
} from '../../cases/complaints.ts';
import { answerOf, leftWith, planOf, splits } from '../../cases/split-list.ts';
import { givensFrom } from '../../simulation/givens.ts';
import type { SimModel } from '../../simulation/sim-spec.ts';

export type ThreeChecksGivens = {
  complaint: ComplaintId;
  /** Number of the car, which says what it has. */
  car: string;
  /** The checks in the order they were taken, a digit each to this base. */
  taken: number;
};

const BASE = CHECKS + 1;
export const MOST_TAKEN = BASE * BASE * BASE * BASE - 1;
/** Where the causes of the first complaint stand by the car's number; each later complaint moves on by one. */
const PLACES = [2, 0, 3, 1, 4];

/** Places of the checks as one number, and back; a place that comes twice counts once. */
export const orderOf = (places: readonly number[]): number =>
  places.reduce((all, place) => all * BASE + place + 1, 0);
export function placesOf(order: number): readonly number[] {
  const digits: number[] = [];
  for (let rest = order; rest > 0; rest = Math.floor(rest / BASE)) digits.unshift(rest % BASE);
  return [...new Set(digits)].filter((digit) => digit > 0).map((digit) => digit - 1);
}

export function causeOf(complaint: ComplaintId, car: string): string {
  const { causes } = complaintOf(complaint);
  const moved = (PLACES[Number(car) - 1] ?? 0) + COMPLAINT_IDS.indexOf(complaint);
  return causes[moved % causes.length] ?? '';
}
/** The car that has it. */
export function carWith(complaint: ComplaintId, cause: string): string {
  const car = PLACES.findIndex((_place, i) => causeOf(complaint, String(i + 1)) === cause);
  return String(car + 1);
}

const START: ThreeChecksGivens = { complaint: 'lateCold', car: '1', taken: 0 };

/** A check on the way: when it ended, and what it took off. */
export interface Step {
  readonly key: string;
  readonly until: number;
  readonly off: readonly string[];
}

export function makeModel() {
  const { givens, apply, reset } = givensFrom(START);
  const complaint = computed(() => complaintOf(givens.complaint.value));
  const keys = computed(() => Object.keys(complaint.value.checks));
  const cause = computed(() => causeOf(givens.complaint.value, givens.car.value));
  const taken = computed(() =>
    placesOf(givens.taken.value).map((place) => keys.value[place] ?? ''),
  );
  const checkOf = (key: string): Check => complaint.value.checks[key] ?? { minutes: 0, parts: [] };
  const leftBy = (by: readonly string[]): readonly string[] =>
    leftWith(complaint.value.causes, by.map(checkOf), cause.value);
  const way = computed((): readonly Step[] =>
    taken.value.map((key, i) => {
      const before = leftBy(taken.value.slice(0, i));
      const after = leftBy(taken.value.slice(0, i + 1));
      const done = taken.value.slice(0, i + 1);
      return {
        key,
        until: done.reduce((sum, one) => sum + checkOf(one).minutes, 0),
        off: before.filter((name) => !after.includes(name)),
      };
    }),
  );
  const left = computed(() => leftBy(taken.value));
  return {
    givens,
    apply,
    reset,
    complaint,
    keys,
    cause,
    taken,
    checkOf,
    way,
    left,
    minutes: computed(() => way.value.at(-1)?.until ?? 0),
    /** All checks together [min]. */
    longest: computed(() => keys.value.reduce((sum, key) => sum + checkOf(key).minutes, 0)),
    /** Whether some check would still shorten it. */
    goesOn: computed(() => keys.value.some((key) => splits(checkOf(key), left.value))),
    plan: computed(() => planOf(complaint.value, complaint.value.causes)),
    /** What a check says to this car, by place. */
    said: (key: string): number => answerOf(checkOf(key), cause.value),
    /** Takes a check next, or takes it back. */
    toggle: (key: string): void => {
      const order = taken.value.includes(key)
        ? taken.value.filter((one) => one !== key)
        : [...taken.value, key];
      givens.taken.value = orderOf(order.map((one) => keys.value.indexOf(one)));
    },
  } satisfies SimModel<ThreeChecksGivens> & Record<string, unknown>;
}
export type ThreeChecksModel = ReturnType<typeof makeModel>;
