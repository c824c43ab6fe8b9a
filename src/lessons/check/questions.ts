/** Question files: JSON, form, item rules, and numbers, sources and objectives that are there. */
import { lintItem, type ItemFault } from '../../quiz/lint.ts';
import { questionSchema, type Question } from '../../quiz/schema.ts';
import { readPassage } from '../../quiz/read-passage.ts';
import { readingsOf } from '../../question-cases/index.ts';
import { chartIds } from '../../question-charts/index.ts';
import { noChart } from '../chart-named.ts';
import { variationNumber } from '../../variations/index.ts';
import { noNumber, numberNamed } from '../number-named.ts';
import { objectives } from '../objectives.ts';
import { variantsOf } from '../variants.ts';
import { inFile, type Fault, type Placed } from './fault.ts';
import { readJson, type JsonText } from './json-text.ts';
import type { Known } from './known.ts';
import { allowedWords } from './nearest.ts';
import { complaints } from './shape.ts';

interface File {
  readonly file: string;
  readonly id: string;
  readonly text: string;
}

interface Read extends File {
  readonly json: JsonText;
  /** Only those of good form, each with its place in the list. */
  readonly questions: readonly { readonly index: number; readonly question: Question }[];
}

/** All question files at once: ids and look-alikes reach across lessons. */
export function checkQuestions(files: readonly File[], known: Known): readonly Fault[] {
  const read = files.map(readFile);
  const concepts = conceptsIn(read);
  // Concepts in a file that cannot be read are unknown, not missing.
  const allRead = read.every(({ json }) => json.value !== undefined);
  const certain = (question: Question): Question =>
    allRead ? question : { ...question, lookAlikes: [] };
  const ids = new Map<string, string>();
  return read.flatMap(({ file, id, text, json, questions }) => {
    const items = Array.isArray(json.value) ? (json.value as unknown[]) : undefined;
    const list = {
      offset: 0,
      sentence: 'A question file is a list of questions in square brackets.',
    };
    return inFile(file, text, [
      ...json.faults,
      ...(json.value !== undefined && items === undefined ? [list] : []),
      ...(items ?? []).flatMap((item, index) => form(json, item, index)),
      ...(items ?? []).flatMap((item, index) => repeated(json, item, index, file, ids)),
      ...questions.flatMap(({ question, index }) =>
        inEachVariant(certain(question), (one) => wrongIn(one, id, concepts, known)).map(
          ({ path, sentence }) => ({
            offset: json.placeOf([index, ...path]),
            sentence,
          }),
        ),
      ),
      ...typedAmounts(text),
    ]);
  });
}

/** Those of good form. */
export const questionsOf = (files: readonly File[]): readonly Question[] =>
  files.flatMap((file) => readFile(file).questions.map(({ question }) => question));

function readFile(file: File): Read {
  const json = readJson(file.text);
  const items = Array.isArray(json.value) ? (json.value as unknown[]) : [];
  const questions = items.flatMap((item, index) => {
    const result = questionSchema.safeParse(item);
    return result.success ? [{ index, question: result.data }] : [];
  });
  return { ...file, json, questions };
}

const form = (json: JsonText, item: unknown, index: number): readonly Placed[] =>
  complaints(questionSchema, item).map(({ path, key, sentence }) => ({
    offset: json.placeOf([index, ...path], key),
    sentence,
  }));

function repeated(
  json: JsonText,
  item: unknown,
  index: number,
  file: string,
  ids: Map<string, string>,
): readonly Placed[] {
  if (typeof item !== 'object' || item === null || !('id' in item)) return [];
  if (typeof item.id !== 'string') return [];
  const before = ids.get(item.id);
  ids.set(item.id, before ?? file);
  if (before === undefined) return [];
  const sentence = `The id "${item.id}" is taken by another question in ${before}. Each question has its own.`;
  return [{ offset: json.placeOf([index, 'id']), sentence }];
}

/** What is wrong with any of its variants, once. */
function inEachVariant(
  question: Question,
  look: (question: Question) => readonly ItemFault[],
): readonly ItemFault[] {
  if (question.varies === undefined) return look(question);
  try {
    const all = variantsOf(question).flatMap((variant) => look(variant.question));
    return all.filter(
      ({ sentence }, i) => all.findIndex((other) => other.sentence === sentence) === i,
    );
  } catch (error) {
    return [{ path: ['varies'], sentence: error instanceof Error ? error.message : String(error) }];
  }
}

function wrongIn(
  question: Question,
  lesson: string,
  concepts: ReadonlySet<string>,
  known: Known,
): readonly ItemFault[] {
  // What else is wrong with it can only be told where it belongs.
  if (question.lesson !== lesson) {
    const sentence = `This question belongs to the lesson "${question.lesson}", and the file to "${lesson}". Move it to ${question.lesson}.json, or correct "lesson".`;
    return [{ path: ['lesson'], sentence }];
  }
  const linted = lintItem(question, concepts, objectives).map(({ path, sentence }) => ({
    path,
    sentence: `Question "${question.id}": ${sentence}`,
  }));
  return [...linted, ...targets(question, known)];
}

/** Read from questions of bad form as well: that their form is bad is told at their own place. */
const conceptsIn = (read: readonly Read[]): ReadonlySet<string> =>
  new Set(
    read
      .flatMap(({ json }) => (Array.isArray(json.value) ? (json.value as unknown[]) : []))
      .flatMap((item) =>
        typeof item === 'object' && item !== null && 'concept' in item
          ? [String(item.concept)]
          : [],
      ),
  );

const marks = ['engine', 'common practice, no source'];

/** What a question points at: its source, and the numbers in the registry. */
function targets(question: Question, known: Known): readonly ItemFault[] {
  const faults: ItemFault[] = [];
  const { source, chart } = question;
  if (chart !== undefined && !chartIds.includes(chart))
    faults.push({ path: ['chart'], sentence: noChart(chart) });
  if (!marks.includes(source) && !known.sources.has(source))
    faults.push({
      path: ['source'],
      sentence: `There is no source "${source}". ${allowedWords(source, [...marks, ...known.sources.keys()], known.folders.sources)}`,
    });
  for (const { path, words } of texts(question)) {
    try {
      readPassage(words, numberNamed);
    } catch (error) {
      faults.push({ path, sentence: error instanceof Error ? error.message : String(error) });
    }
  }
  if (question.kind === 'case') {
    try {
      readingsOf(question);
    } catch (error) {
      faults.push({
        path: ['readings'],
        sentence: error instanceof Error ? error.message : String(error),
      });
    }
  }
  if (question.kind !== 'number') return faults;
  const { key, quantity, distractors } = question.number;
  const number = known.numbers.get(key) ?? variationNumber(key);
  if (number === undefined)
    return [...faults, { path: ['number', 'key'], sentence: noNumber(key) }];
  if (number.quantity !== quantity)
    faults.push({
      path: ['number', 'quantity'],
      sentence: `The question asks for a ${quantity}, and the number "${key}" is a ${number.quantity}.`,
    });
  const rules = Object.keys(number.wrong);
  distractors.forEach(({ rule }, index) => {
    if (!rules.includes(rule))
      faults.push({
        path: ['number', 'distractors', index, 'rule'],
        sentence: `"${key}" has no wrong rule "${rule}". ${allowedWords(rule, rules)}`,
      });
  });
  return faults;
}

function texts(question: Question): readonly Placing[] {
  return [{ path: ['stem'], words: question.stem }, ...innerTexts(question)];
}

interface Placing {
  readonly path: readonly (string | number)[];
  readonly words: string;
}

/** Every text in a list of things, with its place. */
const textsIn = <Key extends string>(
  name: string,
  things: readonly Readonly<Record<Key, string>>[],
  keys: readonly Key[],
): readonly Placing[] =>
  things.flatMap((thing, index) =>
    keys.map((key) => ({ path: [name, index, key], words: thing[key] })),
  );

function innerTexts(question: Question): readonly Placing[] {
  switch (question.kind) {
    case 'number':
      return [
        { path: ['number', 'why'], words: question.number.why },
        ...question.number.distractors.map(({ why }, index) => ({
          path: ['number', 'distractors', index, 'why'],
          words: why,
        })),
      ];
    case 'single':
    case 'several':
      return textsIn('options', question.options, ['text', 'why']);
    case 'case':
      return [
        ...textsIn('readings', question.readings, ['why']),
        ...textsIn('options', question.options, ['text', 'why']),
      ];
    case 'order':
      return textsIn('steps', question.steps, ['text', 'why']);
    case 'match': {
      const { pairs, extra } = question;
      return [
        ...textsIn('pairs', pairs, ['left', 'right', 'why']),
        ...(extra === undefined
          ? []
          : [
              { path: ['extra', 'text'], words: extra.text },
              { path: ['extra', 'why'], words: extra.why },
            ]),
      ];
    }
    case 'spot': {
      const { steps, missing } = question;
      return [
        ...textsIn('steps', steps, ['text', 'why']),
        ...(missing === undefined
          ? []
          : [
              { path: ['missing', 'text'], words: missing.text },
              { path: ['missing', 'why'], words: missing.why },
            ]),
      ];
    }
  }
}

/** Amounts that read differently in the two unit systems; typed into a text they would show to every reader. */
export const oneSystem = /(?<![\d.])\d[\d.,]*\s?(°C|°F|kPa|psi|L\/min|gpm|N·m|lbf)/g;

function typedAmounts(text: string): readonly Placed[] {
  const outside = text.replace(/\{[^{}"\n]*\}/g, (token) => ' '.repeat(token.length));
  return Array.from(outside.matchAll(oneSystem), ({ index, 0: words }) => ({
    offset: index,
    sentence: `"${words}" is typed in one unit system. Write it as {quantity value}, such as {pressure 600} or {temperature 100}, and it reads in both.`,
  }));
}
