import { EngineError } from '../engine/index.ts';
import { answers } from './answers.ts';
import type { Answer } from './answers.ts';
import { SheetRefused } from './car.ts';
import { diagnosisAnswer } from './diagnosis.ts';
import { engineRefusal } from './engine-refusal.ts';
import { immodest } from './modest.ts';
import { requestSchemas } from './request-schema.ts';
import type { RequestKind } from './request-schema.ts';
import { sentenceFor } from './sentence.ts';
import { shown } from './shown.ts';

export type { Answer } from './answers.ts';

/** Read by the planner itself, whose places are those of its own specification. */
const DIAGNOSIS = 'diagnosis';
const kinds = Object.keys(requestSchemas) as RequestKind[];

/** Answers one request; a bad one becomes a refusal, never an exception. */
export function answer(request: unknown): Answer {
  try {
    return answerOrThrow(request);
  } catch (thrown) {
    // Nothing a request says should come to this; if it does, the requests beside it are still answered.
    const { message } = thrown as Error;
    return { error: `The model failed on this request, which is its fault: ${message}.`, path: '' };
  }
}

function answerOrThrow(request: unknown): Answer {
  if (typeof request !== 'object' || request === null || Array.isArray(request)) {
    return {
      error: `The request is ${shown(request)}; it must be an object with a kind.`,
      path: '',
    };
  }
  const outOfProportion = immodest(request);
  if (outOfProportion !== undefined) return outOfProportion;
  const kind = Object.hasOwn(request, 'kind') ? (request as { kind: unknown }).kind : undefined;
  if (kind === DIAGNOSIS) return diagnosisAnswer(request);
  if (!kinds.includes(kind as RequestKind)) {
    return {
      error: `kind is ${shown(kind)}; it must be one of ${[...kinds, DIAGNOSIS].join(', ')}.`,
      path: 'kind',
    };
  }
  const known = kind as RequestKind;
  const schema = requestSchemas[known];
  const parsed = schema.safeParse(request);
  if (!parsed.success) return sentenceFor(parsed.error, request, schema);
  try {
    return (answers[known] as (given: unknown) => Answer)(parsed.data);
  } catch (thrown) {
    if (thrown instanceof SheetRefused) return { error: thrown.message, path: thrown.path };
    if (thrown instanceof EngineError) return engineRefusal(thrown, Object.keys(schema.shape));
    throw thrown;
  }
}

/** One request or an array of them, as a list. */
export function listOf(requests: unknown): readonly unknown[] {
  return Array.isArray(requests) ? (requests as unknown[]) : [requests];
}

/** Answers one request or an array of them. */
export function answerAll(requests: unknown): { answers: Answer[]; refused: boolean } {
  const given = listOf(requests).map((request) => answer(request));
  return { answers: given, refused: given.some((one) => 'error' in one) };
}
