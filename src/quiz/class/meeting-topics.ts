/** What a shop meeting should talk about, by the answers of the class. */
import type { Certainty } from '../certainty.ts';
import { firstAnswers, type Learner } from './first-answers.ts';

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
  const byId = new Map(items.map((item) => [item.id, item]));
  const topics = new Map<
    string,
    {
      lesson: string;
      asked: number;
      missed: number;
      certain: number;
      missedItems: Map<string, number>;
    }
  >();
  for (const { answers } of learners) {
    const asked = new Map<string, { missed: boolean; certain: boolean }>();
    for (const [id, { result, certainty }] of firstAnswers(answers)) {
      const item = byId.get(id);
      if (item === undefined) continue;
      const { concept, lesson } = item;
      const topic = topics.get(concept) ?? {
        ...{ lesson, asked: 0, missed: 0, certain: 0 },
        missedItems: new Map<string, number>(),
      };
      topics.set(concept, topic);
      const so = asked.get(concept) ?? { missed: false, certain: false };
      asked.set(concept, so);
      if (result === 'right') continue;
      so.missed = true;
      so.certain ||= certainty === CERTAIN;
      topic.missedItems.set(id, (topic.missedItems.get(id) ?? 0) + 1);
    }
    for (const [concept, { missed, certain }] of asked) {
      const topic = topics.get(concept);
      if (topic === undefined) continue;
      topic.asked += 1;
      topic.missed += Number(missed);
      topic.certain += Number(certain);
    }
  }
  return [...topics]
    .map(([concept, { missedItems, ...topic }]) => {
      const [worst] = [...missedItems].sort(([, a], [, b]) => b - a);
      return { concept, ...topic, item: worst?.[0] ?? '' };
    })
    .filter(({ missed }) => missed >= FEWEST)
    .sort(
      (a, b) =>
        b.certain - a.certain || b.missed - a.missed || b.missed / b.asked - a.missed / a.asked,
    )
    .slice(0, most);
}
