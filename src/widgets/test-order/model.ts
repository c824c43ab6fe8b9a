import { batch, computed } from '@preact/signals';
import {
  after,
  bestOf,
  isSure,
  jobBegun,
  namesOf,
  rankedOf,
  readingsOn,
  type Job,
  type Ranked,
} from '../../cases/bay-list.ts';
import {
  BAY_KEYS,
  BAY_TESTS,
  BEFORE_OPENING,
  opens,
  reachOf,
  REACHES,
  type BayKey,
} from '../../cases/bay-tests.ts';
import { asGoodAs } from '../../cases/talk-list.ts';
import { givensFrom } from '../../simulation/givens.ts';
import type { SimModel } from '../../simulation/sim-spec.ts';

/** The place of each test in the order of the job; 0 where it was not taken. */
type Order = Record<BayKey, number>;
export type TestOrderGivens = Order & {
  /** Which car is in the bay, by its number. */
  car: string;
};

/** Under this share a name is off the list: for now. */
export const OFF = 0.02;

export const orderOf = (...taken: readonly BayKey[]): Order =>
  Object.fromEntries(BAY_KEYS.map((key) => [key, taken.indexOf(key) + 1])) as Order;
const START: TestOrderGivens = { ...orderOf(), car: '1' };

type One = (typeof BAY_TESTS)[number];
const keysOf = (taken: readonly One[]): readonly BayKey[] => taken.map(({ key }) => key);

/** A test on the way: what it was worth before it was taken, and what would have been the best. */
export interface Step {
  readonly took: Ranked;
  readonly best: Ranked | undefined;
}

export function makeModel() {
  const { givens, apply, reset } = givensFrom(START);
  const taken = computed(() =>
    BAY_TESTS.filter(({ key }) => givens[key].value > 0).sort(
      (one, other) => givens[one.key].value - givens[other.key].value,
    ),
  );
  const readings = computed(() => readingsOn(Number(givens.car.value) - 1));
  /** What a test says on this car, by place. */
  const saidBy = (one: One): number => readings.value[BAY_TESTS.indexOf(one)] ?? 0;
  /** Before the first test, and after each. */
  const jobs = computed(() =>
    taken.value.reduce<readonly [Job, ...Job[]]>(
      ([now, ...before], one) => [after(now, one, saidBy(one)), now, ...before],
      [jobBegun()],
    ),
  );
  const job = computed(() => jobs.value[0]);
  const list = computed(() => namesOf(job.value.shares));
  return {
    givens,
    apply,
    reset,
    taken,
    saidBy,
    job,
    /** Share of each name, in the order of NAMES. */
    list,
    /** How long an even list would be that is as open. */
    open: computed(() => asGoodAs(list.value)),
    sure: computed(() => isSure(job.value)),
    best: computed(() => bestOf(job.value)),
    /** How far somebody has reached so far. */
    reach: computed(
      () => REACHES[Math.max(...taken.value.map((one) => REACHES.indexOf(reachOf(one))))] ?? 'seat',
    ),
    /** What was left out when the transmission was opened. */
    leftOut: computed((): readonly BayKey[] => {
      const keys = keysOf(taken.value);
      const opened = taken.value.findIndex(opens);
      if (opened < 0) return [];
      return BEFORE_OPENING.filter((key) => !keys.slice(0, opened).includes(key));
    }),
    /** Test by test, with what would have been the best each time. */
    way: computed((): readonly Step[] =>
      taken.value.map((one, i) => {
        const then = jobs.value[jobs.value.length - 1 - i] ?? job.value;
        return { took: rankedOf(then, one), best: isSure(then) ? undefined : bestOf(then) };
      }),
    ),
    /** Takes a test as the next one, or takes it back. */
    toggle: (key: BayKey): void => {
      const keys = keysOf(taken.value);
      const next = keys.includes(key) ? keys.filter((one) => one !== key) : [...keys, key];
      batch(() => {
        apply(orderOf(...next));
      });
    },
  } satisfies SimModel<TestOrderGivens> & Record<string, unknown>;
}
export type TestOrderModel = ReturnType<typeof makeModel>;
