/** The round that a plan keeps, and what the log has of it. Apart from the plan, which pages read that ask for neither. */
import type { RetrievalAnswer } from './answer.ts';
import type { RoundKept } from './plan.ts';
import type { KeptAnswer } from './read-answers.ts';

type Answers = readonly Pick<KeptAnswer, 'answer'>[];

/** Those that were given in a round, in their order: its seed and its questions tell. */
export function answersOfRound(
  { seed, items }: RoundKept,
  answers: Answers,
): readonly RetrievalAnswer[] {
  const asked = new Set(items.map(({ id }) => id));
  return answers
    .map(({ answer }) => answer)
    .filter(
      (answer): answer is RetrievalAnswer =>
        answer.kind === 'retrieval' && answer.seed === seed && asked.has(answer.item),
    );
}

/**
 * The round that was begun today and is not over, and how many of it were answered. One that has all its answers is over, though a plan
 * may still name it: those of earlier versions do. One of another day is not gone on with: what is due is asked anew.
 */
export function underWay(
  round: RoundKept | null,
  answers: Answers,
  today: RoundKept['day'],
): { readonly round: RoundKept; readonly done: number } | undefined {
  if (round?.day !== today) return undefined;
  const done = answersOfRound(round, answers).length;
  return done < round.items.length ? { round, done } : undefined;
}
