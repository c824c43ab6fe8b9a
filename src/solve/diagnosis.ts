import {
  decodeTable,
  namedAsRequest,
  plannerOf,
  readQuestion,
  type Advice,
  type Question,
} from '../diagnosis/index.ts';
import { keptTable } from '../diagnosis/kept-table.ts';
import type { Answer } from './answers.ts';

/** Read when the first question comes. */
let planner: ((question: Question) => Advice) | undefined;

/** Answers a request of kind `diagnosis`. */
export function diagnosisAnswer(request: unknown): Answer {
  const question = readQuestion(request);
  if ('error' in question) return question;
  planner ??= plannerOf(decodeTable(keptTable));
  const { faults, next, fit } = planner(question);
  return {
    faults,
    next: next.map(({ test, bits, minutes }) => ({ ...namedAsRequest(test), bits, minutes })),
    fit,
  };
}
