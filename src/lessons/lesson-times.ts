/**
 * How long a lesson takes, by its own text. What is folded as "Go deeper" and the tasks of "Your turn" are not on the path
 * that the times are told for.
 */
import { tagForms } from './tag-forms.ts';

/** Minutes, each rounded up. */
export interface LessonTimes {
  readonly read: number;
  readonly simulate: number;
  readonly questions: number;
}

/** Words a minute, for somebody who reads a trade text to keep it (the course's own rule; common practice, no source). */
const WORDS_PER_MINUTE = 150;
/** A prediction, its run, the comparison and the guided tasks of one simulation [min] (rule of the course, not timed on people). */
const PER_SIMULATION = 4;
/** Four questions of half a minute [min]. */
const QUESTIONS = 2;

const PICTURES = [
  'ControllerDiagram',
  'Drawing',
  'EngineTable',
  'NextTest',
  'Retrieval',
  'Num',
  'Src',
];
const simulations = Object.entries(tagForms).flatMap(([name, { holds }]) =>
  holds || PICTURES.includes(name) ? [] : [name],
);

/** What stands on the path: the hook and all parts before "Your turn", without the folds. */
function onThePath(body: string): string {
  const tasks = body.indexOf('<Tasks>');
  return (tasks < 0 ? body : body.slice(0, tasks)).replace(/<GoDeeper[^]*?<\/GoDeeper>/gu, '');
}

/** @param body the lesson without its front matter; @param hook the front matter's */
export function lessonTimes(body: string, hook: string): LessonTimes {
  const path = onThePath(body);
  const words = `${hook} ${path}`
    .replace(/\$\$[^]*?\$\$/gu, '')
    .replace(/<Src [^>]*>/gu, '')
    // A number is read as a word; other tags are not read.
    .replace(/<Num [^>]*>/gu, ' number ')
    .replace(/<[^>]+>/gu, ' ')
    .split(/\s+/u)
    .filter((word) => /[\p{L}\p{N}]/u.test(word)).length;
  const runs = Array.from(path.matchAll(/^<([A-Z]\w*)\s*\/>/gmu), ([, tag = '']) => tag).filter(
    (tag) => simulations.includes(tag),
  );
  return {
    read: Math.ceil(words / WORDS_PER_MINUTE),
    simulate: runs.length * PER_SIMULATION,
    questions: QUESTIONS,
  };
}

/** All three together [min]. */
export const minutesOf = ({ read, simulate, questions }: LessonTimes): number =>
  read + simulate + questions;
