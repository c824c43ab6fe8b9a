import { computed, signal } from '@preact/signals';
import {
  airAfter,
  driveAfter,
  hidersOf,
  missingBefore,
  skippedOf,
  STEPS,
  type Step,
} from '../../car/back-together.ts';
import { givensFrom } from '../../simulation/givens.ts';
import type { SimModel } from '../../simulation/sim-spec.ts';

/** The two halves of the card; a bit for each line that is signed. */
export const HALVES = {
  inside: STEPS.slice(0, STEPS.indexOf('body')),
  after: STEPS.slice(STEPS.indexOf('body')),
} as const;
export type Half = keyof typeof HALVES;
export const WHOLE = {
  inside: (1 << HALVES.inside.length) - 1,
  after: (1 << HALVES.after.length) - 1,
} as const;

export type JobCardGivens = {
  inside: number;
  after: number;
  /** Whether the card refuses a line too early, or lets it pass. */
  strict: boolean;
};
/** All signed, on a card that lets things pass: one press leaves a line out. */
const START: JobCardGivens = { ...WHOLE, strict: false };

const isIn = (mask: number, at: number): boolean => Boolean(Math.floor(mask) & (1 << at));

/** The card with these lines signed and no others. */
export function cardOf(done: readonly Step[]): { inside: number; after: number } {
  const bits = (half: Half) =>
    HALVES[half].reduce((all, step, at) => (done.includes(step) ? all | (1 << at) : all), 0);
  return { inside: bits('inside'), after: bits('after') };
}
/** All signed but these. */
export const cardWithout = (...left: readonly Step[]) =>
  cardOf(STEPS.filter((step) => !left.includes(step)));

/** What the card said to the last hand: why it refused, or what had to come apart again. */
export type Answer =
  | { readonly refused: Step; readonly missing: Step }
  | { readonly backTo: Step; readonly lines: number };

export function makeModel() {
  const { givens, apply, reset } = givensFrom(START);
  const answer = signal<(Answer & { readonly at: string }) | null>(null);
  const done = computed(() => {
    const masks = { inside: givens.inside.value, after: givens.after.value };
    return (['inside', 'after'] as const).flatMap((half) =>
      HALVES[half].filter((_step, at) => isIn(masks[half], at)),
    );
  });
  /** Which card an answer was given on: on another one it is old. */
  const card = computed(() => done.value.join());
  const skipped = computed(() => skippedOf(done.value));
  const say = (said: Answer | null): void => {
    answer.value = said && { ...said, at: card.value };
  };
  return {
    givens,
    apply,
    reset,
    done,
    skipped,
    /** What the card said to the last hand, as long as nothing else has moved. */
    answer: computed(() => (answer.value?.at === card.value ? answer.value : null)),
    /** Percent held; null as long as nobody has put air on. */
    air: computed(() => (done.value.includes('air') ? airAfter(skipped.value) : null)),
    /** What the first drive reads; null before it. */
    driven: computed(() => (done.value.includes('drive') ? driveAfter(skipped.value) : null)),
    /** Signs a line, or takes it back; a card that refuses takes back what hides it as well. */
    press(step: Step): void {
      const now = done.value;
      const strict = givens.strict.value;
      const missing = strict ? missingBefore(step, now) : undefined;
      if (now.includes(step)) {
        const off = strict ? [step, ...hidersOf(step)] : [step];
        const left = now.filter((one) => !off.includes(one));
        apply(cardOf(left));
        const lines = now.length - left.length;
        say(lines > 1 ? { backTo: step, lines } : null);
      } else if (missing !== undefined) {
        say({ refused: step, missing });
      } else {
        apply(cardOf([...now, step]));
        say(null);
      }
    },
  } satisfies SimModel<JobCardGivens> & Record<string, unknown>;
}
export type JobCardModel = ReturnType<typeof makeModel>;
