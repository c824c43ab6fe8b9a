/**
 * Item lint over a whole bank (learning.md L10, L11; item-writing rules after Haladyna, Downing & Rodriguez 2002).
 * Pure: questions and objective ids in, sentences out. An empty list is a clean bank.
 */
import { isOrdered, startingAmount } from './resolve.ts';
import type { CaseQuestion, ChoiceQuestion, Question } from './schema.ts';

export interface Objective {
  readonly id: string;
  readonly lesson: string;
}

export interface LintRules {
  readonly itemsPerObjective: number;
  readonly formatsPerObjective: number;
  readonly unseenPerLesson: number;
  readonly itemsPerLesson: number;
}
export const defaultRules: LintRules = {
  itemsPerObjective: 3,
  formatsPerObjective: 2,
  unseenPerLesson: 2,
  itemsPerLesson: 6,
};

export function lintBank(
  bank: readonly Question[],
  objectives: readonly Objective[],
  rules: LintRules = defaultRules,
): readonly string[] {
  const concepts = new Set(bank.map((q) => q.concept));
  return [
    ...bank.flatMap((q) =>
      lintItem(q, concepts, objectives).map(({ sentence }) => `${q.id}: ${sentence}`),
    ),
    ...duplicates(bank),
    ...lintKeyLength(bank),
    ...lintKeyPositions(bank),
    ...lintCoverage(bank, objectives, rules),
  ];
}

/** "All of the above" and kin reward test craft, and break when options are shuffled. */
const catchAll =
  /\b(all|none|both|neither|any) of (the above|the others|these|them)\b|\b(both|neither) (a|b)\b/i;
const negative = /\b(not|never|except|least|incorrect|false|untrue|cannot)\b|n['’]t\b/i;
const shouting = /\b(NOT|EXCEPT|NEVER|LEAST)\b/;

export interface ItemFault {
  /** Where in the question. */
  readonly path: readonly (string | number)[];
  readonly sentence: string;
}

/** What is wrong with one question, whatever the rest of the bank is like. */
export function lintItem(
  q: Question,
  /** Those that some question of the bank asks for. */
  concepts: ReadonlySet<string>,
  objectives: readonly Objective[],
): readonly ItemFault[] {
  const out: ItemFault[] = [];
  const say = (sentence: string, ...path: readonly (string | number)[]): void =>
    void out.push({ path, sentence });

  q.objectives.forEach((id, index) => {
    const known = objectives.find((o) => o.id === id);
    if (known === undefined) say(`the objective "${id}" does not exist.`, 'objectives', index);
    else if (known.lesson !== q.lesson)
      say(`the objective "${id}" belongs to the lesson "${known.lesson}".`, 'objectives', index);
  });
  (q.lookAlikes ?? []).forEach((other, index) => {
    if (!concepts.has(other))
      say(`no question has the look-alike concept "${other}".`, 'lookAlikes', index);
  });
  if (q.varies !== undefined && q.tryIt !== undefined) {
    say('its numbers vary, and the simulation of "tryIt" stands at one of them.', 'tryIt');
  }
  // Only the question itself must be positive: "the car does not move" is an honest description of a complaint.
  if (negative.test(questionPart(q.stem)) || shouting.test(q.stem)) {
    say('the stem asks in the negative; ask what is true instead.', 'stem');
  }
  switch (q.kind) {
    case 'single':
    case 'several':
    case 'case':
      lintOptions(q, (sentence) => say(sentence, 'options'));
      break;
    case 'order':
    case 'spot':
      lintWhys(q.steps, (sentence) => say(sentence, 'steps'));
      break;
    case 'match':
      lintWhys(q.pairs, (sentence) => say(sentence, 'pairs'));
      break;
    case 'number':
      break;
  }
  return out;
}

function lintWhys(
  lines: readonly { readonly why: string }[],
  say: (sentence: string) => void,
): void {
  if (new Set(lines.map(({ why }) => why)).size !== lines.length)
    say('two lines share one explanation.');
}

function lintOptions(q: ChoiceQuestion | CaseQuestion, say: (sentence: string) => void): void {
  const right = q.options.filter((o) => o.correct).length;
  if (q.kind === 'single' && right !== 1)
    say(`exactly one option is best, but ${right} are marked correct.`);
  if (q.kind === 'several' && (right < 2 || right === q.options.length)) {
    say(
      `"several" needs at least two correct options and one wrong one, but ${right} of ${q.options.length} are correct.`,
    );
  }
  if (new Set(q.options.map((o) => o.id)).size !== q.options.length)
    say('two options share an id.');
  if (new Set(q.options.map((o) => o.text.toLowerCase())).size !== q.options.length)
    say('two options read the same.');
  if (new Set(q.options.map((o) => o.why)).size !== q.options.length)
    say('two options share one explanation.');
  if (q.options.some((o) => catchAll.test(o.text)))
    say('an option sums up the others ("all of the above").');

  const lengths = q.options.map((o) => o.text.length);
  const [shortest, longest] = [Math.min(...lengths), Math.max(...lengths)];
  if (longest > 1.6 * shortest + 15)
    say(`the options are of unlike length (${shortest} to ${longest} characters).`);

  const texts = q.options.map((o) => o.text);
  if (isOrdered(texts)) {
    const sizes = texts.map((t) => startingAmount(t) ?? 0);
    if (sizes.some((size, i) => i > 0 && size <= (sizes[i - 1] ?? 0)))
      say('options that are amounts stand in order, smallest first.');
  }
}

/** The last sentence ending in a question mark, or the last sentence. */
function questionPart(stem: string): string {
  // A message quoted from a controller is not the author asking.
  const own = stem.replace(/["“][^"”]*["”]/g, '');
  const sentences = own.match(/[^.?!]+[.?!]?/g) ?? [own];
  return sentences.findLast((s) => s.trim().endsWith('?')) ?? sentences.at(-1) ?? own;
}

function duplicates(bank: readonly Question[]): readonly string[] {
  const seen = new Set<string>();
  return bank.flatMap((q) => {
    if (seen.has(q.id)) return [`${q.id}: two questions share this id.`];
    seen.add(q.id);
    return [];
  });
}

const singles = (bank: readonly Question[]): readonly ChoiceQuestion[] =>
  bank.filter(
    (q): q is ChoiceQuestion => q.kind === 'single' && !isOrdered(q.options.map((o) => o.text)),
  );

/** The share of keys that are strictly the longest option, against what chance would give. */
export function keyLongest(bank: readonly Question[]): {
  readonly share: number;
  readonly chance: number;
} {
  const items = singles(bank);
  if (items.length === 0) return { share: 0, chance: 0 };
  const longest = items.filter((q) =>
    q.options.every(
      (o) =>
        o.correct ||
        o.text.length < Math.max(...q.options.filter((k) => k.correct).map((k) => k.text.length)),
    ),
  ).length;
  const chance = items.reduce((sum, q) => sum + 1 / q.options.length, 0) / items.length;
  return { share: longest / items.length, chance };
}

function lintKeyLength(bank: readonly Question[]): readonly string[] {
  const { share, chance } = keyLongest(bank);
  return share > chance + 0.1
    ? [
        `bank: the right option is the longest in ${percent(share)} of items; chance is ${percent(chance)} and 10 % more is allowed.`,
      ]
    : [];
}

/** How often the key stands at each position as authored, among items with `size` options. */
export function keyPositions(bank: readonly Question[], size: number): readonly number[] {
  const items = singles(bank).filter((q) => q.options.length === size);
  return Array.from(
    { length: size },
    (_, i) => items.filter((q) => q.options[i]?.correct === true).length,
  );
}

function lintKeyPositions(bank: readonly Question[]): readonly string[] {
  return [2, 3, 4, 5].flatMap((size) => {
    const counts = keyPositions(bank, size);
    const total = counts.reduce((a, b) => a + b, 0);
    // Printed and projected quizzes show options as authored. Two more or less than even is chance in a small bank.
    const slack = Math.max(2, 0.1 * total);
    return counts.some((c) => Math.abs(c - total / size) > slack)
      ? [
          `bank: in items with ${size} options the key stands at positions ${counts.join(', ')}; spread it evenly.`,
        ]
      : [];
  });
}

function lintCoverage(
  bank: readonly Question[],
  objectives: readonly Objective[],
  rules: LintRules,
): readonly string[] {
  const perObjective = objectives.flatMap((o) => {
    const items = bank.filter((q) => q.objectives.includes(o.id));
    const formats = new Set(items.map((q) => q.kind)).size;
    return [
      ...(items.length < rules.itemsPerObjective
        ? [`${o.id}: has ${items.length} items and needs ${rules.itemsPerObjective}.`]
        : []),
      ...(formats < rules.formatsPerObjective
        ? [`${o.id}: is asked in ${formats} format(s) and needs ${rules.formatsPerObjective}.`]
        : []),
    ];
  });
  const perLesson = [...new Set(objectives.map((o) => o.lesson))].flatMap((lesson) => {
    const items = bank.filter((q) => q.lesson === lesson);
    const unseen = items.filter((q) => q.unseen).length;
    return [
      ...(items.length < rules.itemsPerLesson
        ? [`${lesson}: has ${items.length} questions and needs ${rules.itemsPerLesson}.`]
        : []),
      ...(unseen < rules.unseenPerLesson
        ? [
            `${lesson}: has ${unseen} questions in an unseen setting and needs ${rules.unseenPerLesson}.`,
          ]
        : []),
    ];
  });
  return [...perObjective, ...perLesson];
}

const percent = (share: number): string => `${Math.round(share * 100)} %`;
