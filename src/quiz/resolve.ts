/** Turns questions as authored into questions as asked. The engine's numbers come through `numbers`: quiz knows no engine. */
import type { ChartPicture } from './chart-picture.ts';
import { printBoth } from '../quantity/print-both.ts';
import type {
  Asked,
  AskedChoice,
  AskedCommon,
  AskedNumber,
  AskedOption,
  CaseMade,
} from './asked.ts';
import { resolveCase, resolveMatch, resolveOrder, resolveSpot } from './resolve-forms.ts';
import type { CaseQuestion, ChoiceQuestion, NumberQuestion, Question } from './schema.ts';
import { readPassage, type EngineNumber, type Lookup } from './read-passage.ts';

export interface KeyNumber extends EngineNumber {
  /** Wrong rules under this key: what the mistake is called, and the value it leads to. */
  readonly wrong: Readonly<Record<string, { readonly mistake: string; readonly value: number }>>;
}
/** What the engine makes for a question besides numbers; a question that asks for it cannot be put without. */
export interface Made {
  readonly chart: (id: string) => ChartPicture;
  readonly readings: (question: CaseQuestion) => CaseMade;
}
export type KeyLookup = (key: string) => KeyNumber;

export function resolveQuestion(
  question: Question,
  numbers: KeyLookup,
  made: Made = nothingMade,
): Asked {
  try {
    return resolve(question, numbers, made);
  } catch (error) {
    throw new Error(
      `Question "${question.id}": ${error instanceof Error ? error.message : String(error)}`,
      { cause: error },
    );
  }
}

const missing = (what: string) => (): never => {
  throw new Error(`it has ${what}, and there is nothing here to make one.`);
};
const nothingMade: Made = { chart: missing('a chart'), readings: missing('a case') };

function resolve(question: Question, numbers: KeyLookup, made: Made): Asked {
  const lookup: Lookup = numbers;
  const { id, objectives, concept, level, unseen, source } = question;
  const common = {
    id,
    objectives,
    concept,
    lookAlikes: question.lookAlikes ?? [],
    level,
    unseen,
    source,
    stem: readPassage(question.stem, lookup),
    ...(question.chart !== undefined && { chart: made.chart(question.chart) }),
    ...(question.tryIt !== undefined && { tryIt: question.tryIt }),
  };
  switch (question.kind) {
    case 'single':
    case 'several':
      return { ...common, ...resolveChoice(question, lookup) };
    case 'number': {
      const asked = { ...common, ...resolveNumber(question, numbers) };
      return question.number.entry === 'type' ? asked : asChoices(asked);
    }
    case 'order':
      return { ...common, ...resolveOrder(question, lookup) };
    case 'match':
      return { ...common, ...resolveMatch(question, lookup) };
    case 'case':
      return { ...common, ...resolveCase(question, lookup, made.readings(question)) };
    case 'spot':
      return { ...common, ...resolveSpot(question, lookup) };
  }
}

function resolveChoice(
  { kind, options }: ChoiceQuestion,
  lookup: Lookup,
): Omit<AskedChoice, keyof AskedCommon> {
  return {
    kind,
    options: options.map((o) => ({
      id: o.id,
      words: readPassage(o.text, lookup),
      correct: o.correct,
      why: readPassage(o.why, lookup),
    })),
    ordered: isOrdered(options.map((o) => o.text)),
  };
}

function resolveNumber(
  question: NumberQuestion,
  numbers: KeyLookup,
): Omit<AskedNumber, keyof AskedCommon> {
  const lookup: Lookup = numbers;
  const { key, quantity, tolerance, distractors, why } = question.number;
  const answer = numbers(key);
  if (answer.quantity !== quantity) {
    throw new Error(
      `asks for a ${quantity}, but the engine number "${key}" is a ${answer.quantity}.`,
    );
  }
  const within = Math.max(
    tolerance.absolute ?? 0,
    (tolerance.relative ?? 0) * Math.abs(answer.value),
  );
  return {
    kind: 'number',
    quantity,
    value: answer.value,
    within,
    valueWords: [printBoth(answer.value, quantity)],
    why: readPassage(why, lookup),
    distractors: distractors.map((d) => {
      const rule = answer.wrong[d.rule];
      if (rule === undefined) {
        throw new Error(
          `"${key}" has no wrong rule "${d.rule}". It has: ${Object.keys(answer.wrong).join(', ') || 'none'}.`,
        );
      }
      return {
        rule: d.rule,
        value: rule.value,
        valueWords: [printBoth(rule.value, quantity)],
        mistake: rule.mistake,
        why: readPassage(d.why, lookup),
      };
    }),
  };
}

/** The same number as a choice between the right value and the values of the wrong rules, smallest first. */
export function asChoices(asked: AskedNumber): Asked {
  const { id, objectives, concept, lookAlikes, level, unseen, source, stem, chart, tryIt } = asked;
  const options: (AskedOption & { readonly size: number })[] = [
    { id: 'right', size: asked.value, words: asked.valueWords, correct: true, why: asked.why },
    ...asked.distractors.map((d) => ({
      id: d.rule,
      size: d.value,
      words: d.valueWords,
      correct: false,
      why: [`You get this if you ${d.mistake}. `, ...d.why],
    })),
  ];
  options.sort((a, b) => a.size - b.size);
  return {
    ...{ id, objectives, concept, lookAlikes, level, unseen, source, stem },
    ...(chart !== undefined && { chart }),
    ...(tryIt !== undefined && { tryIt }),
    kind: 'single',
    ordered: true,
    options: options.map(({ id: optionId, words, correct, why }) => ({
      id: optionId,
      words,
      correct,
      why,
    })),
  };
}

/** Options that all start with an amount are amounts. */
export function isOrdered(texts: readonly string[]): boolean {
  return texts.every((t) => startingAmount(t) !== undefined);
}

export function startingAmount(text: string): number | undefined {
  const match = /^(?:about |at |under |over )?(?:\{[a-zA-Z]+\s+)?(-?\d+(?:\.\d+)?)/i.exec(
    text.trim(),
  );
  return match?.[1] === undefined ? undefined : Number(match[1]);
}
