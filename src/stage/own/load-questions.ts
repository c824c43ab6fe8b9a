import { questionKey, type Questions } from '../../meeting/own.ts';
import type { Asked } from '../../quiz/asked.ts';
import { readQuestionSet } from '../../quiz/question-set.ts';
import { load } from '../../rounds/load.ts';
import type { OwnPlan } from '../../storage/meetings/own-meeting.ts';
import { MOST_OPTIONS } from '../../storage/meetings/own-meeting.ts';
import { questionsAddress } from '../../widgets/retrieval/address.ts';

/** Of a lesson those that a room can vote on; undefined if they did not come. */
export async function votesOf(base: string, lesson: string): Promise<readonly Asked[] | undefined> {
  const loaded = await load(questionsAddress(base, lesson), (text) =>
    readQuestionSet(text, lesson),
  );
  if ('miss' in loaded) return undefined;
  return loaded.got.questions.filter(
    (asked) => asked.kind === 'single' && asked.options.length <= MOST_OPTIONS,
  );
}

/** Every question that a meeting asks; undefined if some did not come. */
export async function questionsFor(base: string, plan: OwnPlan): Promise<Questions | undefined> {
  const lessons = new Set(
    plan.scenes.flatMap((scene) => (scene.kind === 'question' ? [scene.lesson] : [])),
  );
  const sets = await Promise.all(
    Array.from(lessons, async (lesson) => ({ lesson, votes: await votesOf(base, lesson) })),
  );
  if (sets.some(({ votes }) => votes === undefined)) return undefined;
  return new Map(
    sets.flatMap(({ lesson, votes = [] }) =>
      votes.map((asked) => [questionKey({ lesson, id: asked.id }), asked] as const),
    ),
  );
}
