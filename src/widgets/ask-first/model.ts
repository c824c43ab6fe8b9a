import { computed } from '@preact/signals';
import { ASKED, type Asked, type Day } from '../../cases/answers.ts';
import { carOf, suspects } from '../../cases/talk-cars.ts';
import { asGoodAs, byName, sharesAfter, worthOf, type Given } from '../../cases/talk-list.ts';
import { NAMES, type Name } from '../../diagnosis/hypotheses.ts';
import type { Circuit } from '../../engine/index.ts';
import { givensFrom } from '../../simulation/givens.ts';
import type { SimModel } from '../../simulation/sim-spec.ts';
import { CARS, DEALT, dealtAt, nextCar, type Dealt } from './dealt.ts';

/** Whether each question has been asked. */
type Questions = Record<Asked, boolean>;
export type AskFirstGivens = Questions & {
  /** Number of the car: what it has goes by it where nobody has chosen. */
  car: number;
  /** What the car has, which its customer does not know. */
  fault: Name | Dealt;
  /** The circuit that a fault of one circuit sits in. */
  circuit: Circuit | Dealt;
  /** What the car had done before, and the road. */
  day: Day | Dealt;
  /** What the learner says it has; or gives up, and is shown. */
  named: Name | 'none' | 'shown';
};

/** Under this share a name is off the list: for now, since a customer mixes things up. */
export const OFF = 0.02;

export const NOTHING_ASKED = Object.fromEntries(
  ASKED.map((question) => [question, false]),
) as Questions;
/** A car that nobody knows and that nothing was asked of. */
const HIDDEN = {
  fault: DEALT,
  circuit: DEALT,
  day: DEALT,
  named: 'none',
  ...NOTHING_ASKED,
} as const;
const START: AskFirstGivens = { car: CARS.min, ...HIDDEN };

/** What a question is worth once these answers are in [bits]. */
export const worthAfter = (given: Given, question: Asked): number =>
  worthOf(suspects(), sharesAfter(suspects(), given), NAMES.length, question);

/** Share of each name, in the order of NAMES, after these answers. */
export const shareAfter = (given: Given): readonly number[] =>
  byName(suspects(), sharesAfter(suspects(), given), NAMES.length);

export function makeModel() {
  const { givens, apply, reset } = givensFrom(START);
  const has = computed(() => {
    const { fault, circuit, day } = givens;
    const hidden = dealtAt(givens.car.value);
    return {
      fault: fault.value === DEALT ? hidden.fault : fault.value,
      circuit: circuit.value === DEALT ? hidden.circuit : circuit.value,
      day: day.value === DEALT ? hidden.day : day.value,
    };
  });
  const car = computed(() => carOf(has.value.fault, has.value.circuit));
  const answers = computed(() => car.value.truthOn(has.value.day));
  const asked = computed(() => ASKED.filter((question) => givens[question].value));
  const given = computed<Given>(() =>
    Object.fromEntries(asked.value.map((question) => [question, answers.value[question]])),
  );
  const list = computed(() => shareAfter(given.value));
  return {
    givens,
    apply,
    reset,
    /** Fault, place and day, whether chosen or dealt. */
    has,
    hidden: computed(() => givens.fault.value === DEALT),
    /** Brings the next car, with another fault that nobody knows. */
    deal: (): void => apply({ ...HIDDEN, car: nextCar(givens.car.value) }),
    /** The car behind it, and what its customer says to each question, by place. */
    car,
    answers,
    asked,
    given,
    /** Share of each name, in the order of NAMES. */
    list,
    /** How long an even list would be that is as open. */
    open: computed(() => asGoodAs(list.value)),
    off: computed(() => list.value.filter((share) => share < OFF).length),
    /** What a question is worth now [bits]; of one that was asked, what it was worth without its own answer. */
    worth: (question: Asked): number =>
      worthAfter({ ...given.value, [question]: undefined }, question),
  } satisfies SimModel<AskFirstGivens> & Record<string, unknown>;
}
export type AskFirstModel = ReturnType<typeof makeModel>;
