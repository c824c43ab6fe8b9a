import {
  decodeTable,
  estimateLeak,
  namedAsRequest,
  plannerOf,
  readQuestion,
  type Advice,
  type Question,
} from '../diagnosis/index.ts';
import { keptTable } from '../diagnosis/kept-table.ts';
import { training } from '../engine/index.ts';
import type { Answer } from './answers.ts';

/** From this share on the seal's crack is worth a figure. */
const LEAK_FROM = 0.2;

/** Read when the first question comes. */
let planner: ((question: Question) => Advice) | undefined;

/** Answers a request of kind `diagnosis`. */
export function diagnosisAnswer(request: unknown): Answer {
  const question = readQuestion(request);
  if ('error' in question) return question;
  planner ??= plannerOf(decodeTable(keptTable));
  const { faults, next, fit } = planner(question);
  const seal = faults.find(({ fault }) => fault === 'transferSeal')?.probability ?? 0;
  const leak = seal >= LEAK_FROM ? estimateLeak(training, question.readings) : null;
  return {
    faults,
    next: next.map(({ test, bits, minutes }) => ({ ...namedAsRequest(test), bits, minutes })),
    fit,
    ...(leak && {
      leak: {
        height_mm: leak.heightMm,
        width_mm: leak.widthMm,
        leak_Lmin: leak.leakLmin,
        correlation: leak.correlation,
        apart: leak.apart,
        width_height2_mm3: leak.widthHeightSquared,
        helps: leak.helps,
      },
    }),
  };
}
