import {
  buildTable,
  decodeTable,
  estimateLeak,
  namedAsRequest,
  plannerOf,
  readQuestion,
  type Advice,
  type Question,
  type Table,
} from '../diagnosis/index.ts';
import { keptSecondTable } from '../diagnosis/kept-second-table.ts';
import { keptTable } from '../diagnosis/kept-table.ts';
import { secondTraining, training, type Plant } from '../engine/index.ts';
import type { Answer } from './answers.ts';
import { SheetRefused, transmissionOf } from './car.ts';

/** From this share on the seal's crack is worth a figure. */
const LEAK_FROM = 0.2;

const sheetOf = (plant: Plant): string => JSON.stringify({ ...plant, name: '' });

/** A minute of work for a transmission whose table is not kept. */
function tableOf(plant: Plant): Table {
  if (sheetOf(plant) === sheetOf(training)) return decodeTable(keptTable);
  if (sheetOf(plant) === sheetOf(secondTraining)) return decodeTable(keptSecondTable);
  const steps = buildTable(plant);
  let step = steps.next();
  while (step.done !== true) step = steps.next();
  return step.value;
}

type Planner = (question: Question) => Advice;
/** By transmission, each made when the first question about it comes. */
const planners = new Map<string, Planner>();
function plannerFor(plant: Plant): Planner {
  const sheet = sheetOf(plant);
  const planner = planners.get(sheet) ?? plannerOf(tableOf(plant));
  planners.set(sheet, planner);
  return planner;
}

/** Answers a request of kind `diagnosis`. */
export function diagnosisAnswer(request: unknown): Answer {
  const question = readQuestion(request);
  if ('error' in question) return question;
  const { transmission } = request as { readonly transmission?: unknown };
  try {
    return answerOf(question, transmission === undefined ? training : transmissionOf(transmission));
  } catch (thrown) {
    if (thrown instanceof SheetRefused) return { error: thrown.message, path: thrown.path };
    throw thrown;
  }
}

function answerOf(question: Question, plant: Plant): Answer {
  const { faults, next, fit } = plannerFor(plant)(question);
  const seal = faults.find(({ fault }) => fault === 'transferSeal')?.probability ?? 0;
  const leak = seal >= LEAK_FROM ? estimateLeak(plant, question.readings) : null;
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
