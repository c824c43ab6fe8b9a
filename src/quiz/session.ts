/**
 * One lesson's retrieval questions from first to last. A session is plain data and every step returns a new one, so it can
 * be stored, replayed and tested. Seed in, order out; no clock: who wants times adds them outside.
 */
import type { Asked } from './asked.ts';
import { grade, type Given, type Outcome } from './grade.ts';
import type { Certainty } from './certainty.ts';
import { mixedUp } from './mixed-up.ts';
import { seededRandom, shuffled } from './seeded-order.ts';

export interface SessionAnswer {
  readonly id: string;
  readonly given: Given;
  readonly outcome: Outcome;
}

export interface Session {
  readonly seed: number;
  /** Questions in asking order, options in showing order. */
  readonly questions: readonly Asked[];
  /** answers[i] belongs to questions[i]; the last may still be on show. */
  readonly answers: readonly SessionAnswer[];
  /** True while an answer's explanation is on show and "next" has not been pressed. */
  readonly explaining: boolean;
}

/** @param order `kept` asks them as they come, where somebody has put them in order; options are mixed either way */
export function startSession(
  questions: readonly Asked[],
  seed: number,
  order: 'mixed' | 'kept' = 'mixed',
): Session {
  if (questions.length === 0) throw new Error('A session needs at least one question.');
  const random = seededRandom(seed);
  const asked = order === 'kept' ? questions : spread(shuffled(questions, random));
  const mixed = asked.map((q) => mixedUp(q, random));
  return { seed, questions: mixed, answers: [], explaining: false };
}

/**
 * Keeps two of one concept apart where the set allows it (L9 asks for it between lessons; inside one it costs nothing):
 * greedy, takes the first question whose concept differs from the one before.
 */
function spread(questions: readonly Asked[]): readonly Asked[] {
  const left = [...questions];
  const out: Asked[] = [];
  while (left.length > 0) {
    const before = out.at(-1)?.concept;
    const at = Math.max(
      0,
      left.findIndex((q) => q.concept !== before),
    );
    out.push(...left.splice(at, 1));
  }
  return out;
}

/** Undefined when every question has been answered and its explanation left. */
export function current(session: Session): Asked | undefined {
  return session.questions[
    session.explaining ? session.answers.length - 1 : session.answers.length
  ];
}

export type Answered =
  | { readonly ok: true; readonly session: Session; readonly outcome: Outcome }
  | {
      readonly ok: false;
      readonly missing: 'answer' | 'certainty';
      readonly sentence: string;
    };

export function answer(session: Session, given: Given, certainty: Certainty | undefined): Answered {
  const asked = current(session);
  if (asked === undefined) throw new Error('Every question of this session has been answered.');
  if (session.explaining) throw new Error(`Question "${asked.id}" has been answered already.`);
  // The order of the two checks is the order of the two controls on the page.
  const graded = grade(asked, given, certainty ?? 1);
  if (!graded.ok) return { ...graded, missing: 'answer' };
  if (certainty === undefined)
    return {
      ok: false,
      missing: 'certainty',
      sentence: 'Say how sure you are first: it counts only before you know.',
    };
  const { outcome } = graded;
  return {
    ok: true,
    outcome,
    session: {
      ...session,
      explaining: true,
      answers: [...session.answers, { id: asked.id, given, outcome }],
    },
  };
}

export function next(session: Session): Session {
  return { ...session, explaining: false };
}

export interface Summary {
  readonly asked: number;
  readonly right: number;
  readonly marks: number;
  readonly best: number;
  /** How often each certainty was right: the calibration picture. */
  readonly calibration: readonly {
    readonly certainty: Certainty;
    readonly said: number;
    readonly right: number;
  }[];
  /** Wrong answers, the surest first: a confident error is the one to come back to (L13). */
  readonly again: readonly {
    readonly id: string;
    readonly certainty: Certainty;
    readonly objectives: readonly string[];
  }[];
}

export function summarise(session: Session): Summary {
  const outcomes = session.answers.map((a) => a.outcome);
  const again = session.answers.flatMap((a, i) => {
    const question = session.questions[i];
    return a.outcome.right || question === undefined
      ? []
      : [{ id: a.id, certainty: a.outcome.certainty, objectives: question.objectives }];
  });
  return {
    asked: outcomes.length,
    right: outcomes.filter((o) => o.right).length,
    marks: outcomes.reduce((sum, o) => sum + o.marks, 0),
    best: outcomes.length * 3,
    calibration: ([1, 2, 3] as const).map((certainty) => {
      const of = outcomes.filter((o) => o.certainty === certainty);
      return { certainty, said: of.length, right: of.filter((o) => o.right).length };
    }),
    again: again.sort((a, b) => b.certainty - a.certainty),
  };
}
