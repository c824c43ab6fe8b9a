/** The state of one retrieval set on a page. Runs in Node; the clock gives only the seed, and gives it from outside. */
import { computed, signal } from '@preact/signals';
import type { Varied } from '../../quiz/asked.ts';
import type { Certainty } from '../../quiz/certainty.ts';
import type { Given } from '../../quiz/grade.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { pickRound, ROUND_SIZE } from '../../quiz/pick-round.ts';
import { typedIn } from '../../quiz/typed-in.ts';
import { pickVariant } from '../../quiz/pick-variant.ts';
import { resultOf, type Result } from '../../quiz/result.ts';
import { seededRandom } from '../../quiz/seeded-order.ts';
import {
  answer,
  current,
  next,
  startSession,
  summarise,
  type Session,
} from '../../quiz/session.ts';

export interface Complaint {
  readonly place: 'answer' | 'certainty';
  readonly sentence: string;
}

export type Stage = 'offered' | 'paused' | 'asking' | 'explained' | 'over';

/** An answer that counted, for whoever keeps them. */
export interface Counted {
  readonly item: string;
  readonly seed: number;
  /** Which of its variants was asked, where the question varies. */
  readonly variant?: string;
  readonly given: Given;
  readonly result: Result;
  readonly certainty: Certainty;
}

/** An answer from before, to take a round up where it was left. */
export interface Earlier extends Pick<Counted, 'item' | 'given' | 'certainty'> {
  readonly variant?: string | undefined;
}

/** @param which `all` asks every question, in the order they come; else each start picks a few */
export function retrievalModel(
  questions: readonly Varied[],
  onAnswer: (counted: Counted) => void = () => undefined,
  which: 'a few' | 'all' = 'a few',
) {
  const session = signal<Session | undefined>(undefined);
  /** The lesson is out of sight. */
  const covered = signal(false);
  const ticked = signal<readonly string[]>([]);
  const typed = signal('');
  const certainty = signal<Certainty | undefined>(undefined);
  const complaint = signal<Complaint | undefined>(undefined);

  const question = computed(() =>
    session.value === undefined ? undefined : current(session.value),
  );
  const stage = computed<Stage>(() => {
    if (session.value === undefined) return 'offered';
    if (question.value === undefined) return 'over';
    if (!covered.value) return 'paused';
    return session.value.explaining ? 'explained' : 'asking';
  });
  const last = computed(() => session.value?.answers.at(-1));
  const place = computed(() => {
    const s = session.value;
    return s === undefined ? 1 : s.answers.length + (s.explaining ? 0 : 1);
  });
  const summary = computed(() =>
    session.value === undefined ? undefined : summarise(session.value),
  );

  /** What earlier rounds on this page asked; another round takes the rest first. */
  const before = new Set<string>();

  const givenIn = (system: UnitSystem): Given =>
    question.value?.kind === 'number'
      ? { kind: 'typed', text: typed.value, system }
      : { kind: 'chosen', ids: ticked.value };

  function clear(): void {
    ticked.value = [];
    typed.value = '';
    certainty.value = undefined;
    complaint.value = undefined;
  }

  return {
    /** Questions in one round. */
    count: which === 'all' ? questions.length : Math.min(ROUND_SIZE, questions.length),
    ...{
      session,
      covered,
      ticked,
      typed,
      certainty,
      complaint,
      question,
      stage,
      last,
      place,
      summary,
    },
    /**
     * @param drawn what a round that was left had; what is gone of it since is left out
     * @returns the questions of the round, as they were drawn
     */
    start: (seed: number, drawn?: readonly string[]): readonly string[] => {
      clear();
      let round = questions;
      if (which === 'all') session.value = startSession(questions, seed, 'kept');
      else {
        const again = (drawn ?? []).flatMap((id) => questions.filter((q) => q.id === id));
        round = again.length > 0 ? again : pickRound(questions, seededRandom(seed), before);
        for (const q of round) before.add(q.id);
        session.value = startSession(
          round.map((q) => pickVariant(q, seed)),
          seed,
        );
      }
      covered.value = true;
      return round.map(({ id }) => id);
    },
    /**
     * Answers a round again as it was answered; stops at the first that is not the next, and keeps nothing twice. An answer
     * to a variant that is gone since counts, but is to be seen no more.
     */
    takeUp: (answers: readonly Earlier[]): void => {
      const still = new Map(session.peek()?.questions.map(({ id, variant }) => [id, variant]));
      for (const { item, variant, given, certainty: sure } of answers) {
        if (still.get(item) !== variant) continue;
        const now = session.peek();
        if (now === undefined || current(now)?.id !== item) return;
        const answered = answer(now, given, sure);
        if (!answered.ok) return;
        session.value = next(answered.session);
      }
      if (question.peek() === undefined) covered.value = false;
    },
    carryOn: (): void => {
      covered.value = true;
    },
    /** Shows the lesson again; what was answered, and what was ticked but not checked, stays. */
    uncover: (): void => {
      covered.value = false;
    },
    tick: (id: string): void => {
      if (question.value?.kind === 'single') ticked.value = [id];
      else
        ticked.value = ticked.value.includes(id)
          ? ticked.value.filter((t) => t !== id)
          : [...ticked.value, id];
      if (complaint.value?.place === 'answer') complaint.value = undefined;
    },
    /** The whole answer at once, where it is more than a tick. */
    give: (ids: readonly string[]): void => {
      ticked.value = ids;
      if (complaint.value?.place === 'answer') complaint.value = undefined;
    },
    type: (text: string): void => {
      typed.value = text;
      if (complaint.value?.place === 'answer') complaint.value = undefined;
    },
    sure: (how: Certainty): void => {
      certainty.value = how;
      if (complaint.value?.place === 'certainty') complaint.value = undefined;
    },
    /** What stands in the form. */
    given: givenIn,
    /** Puts what was given before into the form; it has not been checked. */
    putBack: (given: Given, how: Certainty | undefined, system: UnitSystem): void => {
      const asked = question.peek();
      if (given.kind === 'chosen') ticked.value = given.ids;
      else if (asked?.kind === 'number') typed.value = typedIn(given, asked.quantity, system);
      certainty.value = how;
    },
    /** True when the answer counted; false when `complaint` says what is missing. */
    check: (system: UnitSystem): boolean => {
      const asked = question.value;
      const now = session.value;
      if (asked === undefined || now === undefined || now.explaining) return false;
      const given = givenIn(system);
      const answered = answer(now, given, certainty.value);
      if (!answered.ok) {
        complaint.value = { place: answered.missing, sentence: answered.sentence };
        return false;
      }
      complaint.value = undefined;
      session.value = answered.session;
      onAnswer({
        item: asked.id,
        seed: now.seed,
        ...(asked.variant !== undefined && { variant: asked.variant }),
        given,
        result: resultOf(answered.outcome),
        certainty: answered.outcome.certainty,
      });
      return true;
    },
    next: (): void => {
      if (session.value === undefined) return;
      clear();
      session.value = next(session.value);
      if (question.value === undefined) covered.value = false;
    },
  };
}

export type RetrievalModel = ReturnType<typeof retrievalModel>;
