/**
 * How long a lesson takes, measured on its own text whenever it is built. The main path is what stands before "Your turn",
 * without what is folded as "Go deeper". The written tasks of "Your turn" come on top, and the course page says so.
 */
import { SECONDS_EACH } from '../quiz/schedule/round.ts';
import { simulations } from './simulations.ts';

/** Minutes, each rounded up, so that the three printed figures add up to the printed sum. */
export interface LessonTimes {
  readonly read: number;
  readonly simulate: number;
  /** For the questions of the main path. */
  readonly questions: number;
  /** For the rest of the round, which comes on top of the three and is told beside them. */
  readonly more: number;
}

/** How many questions belong to the main path: as many as the least a lesson has. A round goes on to ask some more. */
export const MAIN_QUESTIONS = 4;
/** What the main path may take [min]. */
export const LONGEST = 15;

/** The rule of the course, in one place; not timed on people. */
const WORDS_PER_MINUTE = 150;
/** To predict, run and compare [s]. */
const PER_RUN = 40;
const PER_TASK = 60;

/** @param body a lesson without its front matter */
const mainPath = (body: string): string => {
  const tasks = body.indexOf('<Tasks>');
  return (tasks < 0 ? body : body.slice(0, tasks))
    .replace(/\{\/\*[^]*?\*\/\}/gu, '')
    .replace(/<GoDeeper[^]*?<\/GoDeeper>/gu, '');
};

/** Words as somebody reads them: a number with its unit is one, titles of sections count, formulas and figures do not. */
function wordsIn(text: string): number {
  return text
    .replace(/\$\$[^]*?\$\$/gu, '')
    .replace(/<Src [^>]*>|\s*\((?:common practice, no source|práctica común, sin fuente)\)/gu, '')
    .replace(/<(?:Num|Sum) [^>]*>/gu, ' number ')
    .replace(/<Section title="([^"]*)"[^>]*>/gu, ' $1 ')
    .replace(/<[^>]+>/gu, ' ')
    .split(/\s+/u)
    .filter((word) => /[\p{L}\p{N}]/u.test(word)).length;
}

/** The questions of a round: those of the main path, and the rest. */
export const parted = (asked: number): { readonly main: number; readonly more: number } => {
  const main = Math.min(asked, MAIN_QUESTIONS);
  return { main, more: asked - main };
};

const minutesFor = (questions: number): number => Math.ceil((questions * SECONDS_EACH) / 60);

interface TimedText {
  readonly body: string;
  readonly hook: string;
  /** The sentences under "What you will be able to do". */
  readonly objectives: readonly string[];
  /** How many questions a round of it asks. */
  readonly asked: number;
}

export function lessonTimes({ body, hook, objectives, asked }: TimedText): LessonTimes {
  const path = mainPath(body);
  const { main, more } = parted(asked);
  const seconds = Array.from(path.matchAll(/^<([A-Z]\w*)\s*\/>/gmu), ([, tag = '']) => {
    const simulation = simulations[tag];
    return simulation === undefined ? 0 : PER_RUN + PER_TASK * simulation.tasks;
  });
  return {
    read: Math.ceil(wordsIn([hook, ...objectives, path].join(' ')) / WORDS_PER_MINUTE),
    simulate: Math.ceil(seconds.reduce((sum, one) => sum + one, 0) / 60),
    questions: minutesFor(main),
    more: minutesFor(more),
  };
}

/** The main path: the three together [min]. */
export const minutesOf = ({ read, simulate, questions }: LessonTimes): number =>
  read + simulate + questions;
