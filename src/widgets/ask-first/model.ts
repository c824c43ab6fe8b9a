import { computed } from '@preact/signals';
import { ASKED, type Asked, type Day } from '../../cases/answers.ts';
import { carOf, suspects } from '../../cases/talk-cars.ts';
import { asGoodAs, byName, sharesAfter, worthOf, type Given } from '../../cases/talk-list.ts';
import { NAMES, type Name } from '../../diagnosis/hypotheses.ts';
import type { Circuit } from '../../engine/index.ts';
import { givensFrom } from '../../simulation/givens.ts';
import type { SimModel } from '../../simulation/sim-spec.ts';

/** Whether each question has been asked. */
type Questions = Record<Asked, boolean>;
export type AskFirstGivens = Questions & {
  /** What the car has, which its customer does not know. */
  fault: Name;
  /** The circuit that a fault of one circuit sits in. */
  circuit: Circuit;
  /** What the car had done before, and the road. */
  day: Day;
};

/** Under this share a name is off the list: for now, since a customer mixes things up. */
export const OFF = 0.02;

export const NOTHING_ASKED = Object.fromEntries(
  ASKED.map((question) => [question, false]),
) as Questions;
const START: AskFirstGivens = {
  fault: 'transferSeal',
  circuit: 'forward',
  day: 'overnight-flat',
  ...NOTHING_ASKED,
};

/** What a question is worth once these answers are in [bits]. */
export const worthAfter = (given: Given, question: Asked): number =>
  worthOf(suspects(), sharesAfter(suspects(), given), NAMES.length, question);

export function makeModel() {
  const { givens, apply, reset } = givensFrom(START);
  const car = computed(() => carOf(givens.fault.value, givens.circuit.value));
  const answers = computed(() => car.value.truthOn(givens.day.value));
  const asked = computed(() => ASKED.filter((question) => givens[question].value));
  const given = computed<Given>(() =>
    Object.fromEntries(asked.value.map((question) => [question, answers.value[question]])),
  );
  const shares = computed(() => sharesAfter(suspects(), given.value));
  const list = computed(() => byName(suspects(), shares.value, NAMES.length));
  return {
    givens,
    apply,
    reset,
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
