/**
 * Reads content/<language>/questions at build time. Plain `fs` and not an Astro collection: tests, meeting mode and scripts in Node
 * need the same bank, and a collection exists only inside Astro. Paths start from the project root, where every command runs.
 */
import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { language } from '../language/current.ts';
import type { Asked } from '../quiz/asked.ts';
import { readQuestionSet, writeQuestionSet, type QuestionSet } from '../quiz/question-set.ts';
import { resolveQuestion } from '../quiz/resolve.ts';
import { parseQuestions, type Question } from '../quiz/schema.ts';
import { chartNamed } from './chart-named.ts';
import { numberNamed } from './number-named.ts';
import { objectivesOf, type Objective } from './objectives.ts';

const folder = join('content', language.id, 'questions');

let bank: readonly Question[] | undefined;

export function questionBank(): readonly Question[] {
  bank ??= (existsSync(folder) ? readdirSync(folder) : [])
    .filter((name) => name.endsWith('.json'))
    .sort()
    .flatMap((name) => readFile(name));
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

export interface RetrievalSet {
  readonly lesson: string;
  readonly questions: readonly Asked[];
  readonly objectives: readonly Objective[];
}

/** Numbers computed by the engine here and now, so the page carries no engine for them. */
export function retrievalSet(lesson: string): RetrievalSet {
  const questions = questionBank()
    .filter((q) => q.lesson === lesson)
    .map((q) => resolveQuestion(q, numberNamed, chartNamed));
  return { lesson, questions, objectives: objectivesOf(lesson) };
}

/** The text of the lesson's question file, read back here as the page will: one it would refuse fails the build. */
export function questionFile(lesson: string): string {
  const { questions, objectives } = retrievalSet(lesson);
  const set: QuestionSet = {
    form: 1,
    lesson,
    questions,
    objectives: objectives.map(({ id, text }) => ({ id, text })),
  };
  const text = writeQuestionSet(set);
  readQuestionSet(text, lesson);
  return text;
}
