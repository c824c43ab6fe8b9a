/** How an answer stands before anything is told of it. */
import type { Asked } from '../asked.ts';
import type { Certainty } from '../certainty.ts';
import { grade, type Given, type Graded } from '../grade.ts';

/** What somebody has put down for a question so far. */
export interface PutDown {
  readonly given?: Given | undefined;
  readonly certainty?: Certainty | undefined;
}

/**
 * `open`: nothing put down. `unread`: a number that cannot be read, say. `unsure`: it does not say how sure.
 * `answered`: it counts.
 */
export type Standing = 'open' | 'unread' | 'unsure' | 'answered';

export function isBlank(given: Given): boolean {
  switch (given.kind) {
    case 'chosen':
      return given.ids.length === 0;
    case 'typed':
      return given.text.trim() === '';
  }
}

/** Graded, or undefined where the question has changed since, so that the answer names what is no longer in it. */
export function gradedAgain(asked: Asked, given: Given, certainty: Certainty): Graded | undefined {
  try {
    return grade(asked, given, certainty);
  } catch {
    return undefined;
  }
}

export function standingOf(asked: Asked, { given, certainty }: PutDown): Standing {
  if (given === undefined || isBlank(given)) return 'open';
  if (gradedAgain(asked, given, certainty ?? 1)?.ok !== true) return 'unread';
  return certainty === undefined ? 'unsure' : 'answered';
}
