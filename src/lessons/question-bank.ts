/**
 * Reads content/<language>/questions at build time. Plain `fs` and not an Astro collection: tests, meeting mode and scripts in Node
 * need the same bank, and a collection exists only inside Astro. Paths start from the project root, where every command runs.
 */
import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { language } from '../language/current.ts';
import type { Varied } from '../quiz/asked.ts';
import { ROUND_SIZE } from '../quiz/pick-round.ts';
import { readQuestionSet, writeQuestionSet, type QuestionSet } from '../quiz/question-set.ts';
import { parseQuestions, type Question } from '../quiz/schema.ts';
import { sectionOf, type ObjectiveId } from './objective-sections.ts';
import { objectivesOf, type Objective } from './objectives.ts';
import { askedOf, inFirst } from './variants.ts';

const folder = join('content', language.id, 'questions');

let authored: readonly Question[] | undefined;
let bank: readonly Question[] | undefined;

/** As written: a question that varies has its choices of words and the short names of its numbers. */
export function authoredBank(): readonly Question[] {
  authored ??= (existsSync(folder) ? readdirSync(folder) : [])
    .filter((name) => name.endsWith('.json'))
    .sort()
    .flatMap((name) => readFile(name));
  return authored;
}

/** One that varies stands in the first of its variants. */
export function questionBank(): readonly Question[] {
  bank ??= authoredBank().map(inFirst);
  return bank;
}

function readFile(name: string): readonly Question[] {
  const text = readFileSync(join(folder, name), 'utf8');
  let raw: unknown;
  try {
    raw = JSON.parse(text);
  } catch (error) {
    throw new Error(`${name} is not valid JSON: ${error instanceof Error ? error.message : ''}`, {
      cause: error,
    });
  }
  const questions = parseQuestions(raw, name);
  const lesson = name.replace(/\.json$/, '');
  const stray = questions.find((q) => q.lesson !== lesson);
  if (stray !== undefined) {
    throw new Error(
      `${name}: question "${stray.id}" belongs to the lesson "${stray.lesson}"; put it in ${stray.lesson}.json.`,
    );
  }
  return questions;
}

/** Whether this language has questions for the lesson. A lesson may be translated before them. */
export const hasQuestions = (lesson: string): boolean =>
  questionBank().some((question) => question.lesson === lesson);

/** How many questions of the lesson one round asks. */
export const askedAtOnce = (lesson: string): number =>
  Math.min(ROUND_SIZE, questionBank().filter((question) => question.lesson === lesson).length);

export interface RetrievalSet {
  readonly lesson: string;
  readonly questions: readonly Varied[];
  readonly objectives: readonly Objective[];
}

/** Numbers computed by the engine here and now, so the page carries no engine for them. */
export function retrievalSet(lesson: string): RetrievalSet {
  const questions = authoredBank()
    .filter((q) => q.lesson === lesson)
    .map(askedOf);
  return { lesson, questions, objectives: objectivesOf(lesson) };
}

/** The text of the lesson's question file, read back here as the page will: one it would refuse fails the build. */
export function questionFile(lesson: string): string {
  const { questions, objectives } = retrievalSet(lesson);
  const set: QuestionSet = {
    form: 1,
    lesson,
    questions,
    objectives: objectives.map(({ id, text }) => ({
      ...{ id, text },
      section: sectionOf[id as ObjectiveId],
    })),
  };
  const text = writeQuestionSet(set);
  readQuestionSet(text, lesson);
  return text;
}
