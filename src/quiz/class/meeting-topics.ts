/** What a shop meeting should talk about, by the answers of the class. */
import type { Certainty } from '../certainty.ts';
import { firstAnswers, type ClassAnswer, type Learner } from './first-answers.ts';

export interface Topic {
  readonly concept: string;
  readonly lesson: string;
  /** The question that most of them missed. */
  readonly item: string;
  /** Learners who were asked about it. */
  readonly asked: number;
  /** Of them who had one of its questions not right at the first try. */
  readonly missed: number;
  /** Of those who were certain of it. */
  readonly certain: number;
}

interface Item {
  readonly id: string;
  readonly concept: string;
  readonly lesson: string;
}

const CERTAIN: Certainty = 3;
/** One person's slip is a talk between two, no topic for a meeting. */
const FEWEST = 2;

/**
 * Ideas that two or more had wrong: first by how many were certain of it, since nobody asks about what he is certain of; then by
 * how many missed it, then by how large a part of those asked that is.
 */
export function meetingTopics(
  items: readonly Item[],
  learners: readonly Learner[],
  most = 5,
): readonly Topic[] {
  const firsts = learners.map(({ answers }) => firstAnswers(answers));
  const ideas = new Map<string, Item[]>();
  for (const item of items) ideas.set(item.concept, [...(ideas.get(item.concept) ?? []), item]);
  return [...ideas]
    .flatMap(([concept, of]) => topicOf(concept, of, firsts) ?? [])
    .sort(
      (a, b) =>
        b.certain - a.certain || b.missed - a.missed || b.missed / b.asked - a.missed / a.asked,
    )
    .slice(0, most);
}

function topicOf(
  concept: string,
  items: readonly Item[],
  firsts: readonly ReadonlyMap<string, ClassAnswer>[],
): Topic | undefined {
  const asked = firsts
    .map((first) => items.flatMap(({ id }) => first.get(id) ?? []))
    .filter((answers) => answers.length > 0);
  const wrong = asked.map((answers) => answers.filter(({ result }) => result !== 'right'));
  const missed = wrong.filter((answers) => answers.length > 0);
  const timesMissed = ({ id }: Item): number =>
    wrong.flat().filter(({ item }) => item === id).length;
  const [worst] = [...items].sort((a, b) => timesMissed(b) - timesMissed(a));
  if (worst === undefined || missed.length < FEWEST) return undefined;
  return {
    ...{ concept, lesson: worst.lesson, item: worst.id },
    asked: asked.length,
    missed: missed.length,
    certain: missed.filter((answers) => answers.some(({ certainty }) => certainty === CERTAIN))
      .length,
  };
}
