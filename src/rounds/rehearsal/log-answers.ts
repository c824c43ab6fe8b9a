import type { RetrievalAnswer } from '../../storage/answer.ts';
import type { AnswersRead } from '../../storage/read-answers.ts';
import type { Rehearsal } from '../../storage/rehearsals.ts';
import { retrievalsOf } from '../../widgets/retrieval/answered.ts';

interface Log {
  readonly readAnswers: () => Promise<AnswersRead>;
  /** True if it is kept. */
  readonly keepAnswer: (answer: RetrievalAnswer) => Promise<boolean>;
}

/**
 * Puts the answers of a rehearsal into the log, those that are not there yet: a device may have died half way.
 * @returns true if all of them are there
 */
export async function logAnswers(rehearsal: Rehearsal, log: Log, fresh: boolean): Promise<boolean> {
  const there = new Set<string>();
  if (!fresh) {
    const read = await log.readAnswers();
    if (read.status !== 'ok') return false;
    for (const { answer } of retrievalsOf(read)) {
      if (answer.seed === rehearsal.begun) there.add(answer.item);
    }
  }
  const kept = await Promise.all(
    rehearsal.items.map(async ({ id, lesson, variant, given, certainty, result }) => {
      if (given === undefined || certainty === undefined || result === undefined) return true;
      if (there.has(id)) return true;
      return log.keepAnswer({
        ...{ kind: 'retrieval', lesson, item: id, seed: rehearsal.begun },
        ...(variant !== undefined && { variant }),
        ...{ given, result, certainty },
      });
    }),
  );
  return kept.every(Boolean);
}
