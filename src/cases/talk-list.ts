/**
 * What a customer's answers leave of the list, and what a question is worth before it is asked: Bayes' rule and Shannon's
 * information. A customer mixes things up, and how often is an assumption of this site (common practice, no source).
 */
import { ANSWERS, ASKED, DAYS, type Asked } from './answers.ts';

/** How often a customer says what is so, and how often "I can't say"; the rest is spread over the other answers. */
export const TRUE = 0.85;
export const UNSURE = 0.1;
/** A restart helps so often where a valve fades hot, and where the cause is not in the list. */
const HELPS = 0.4;

/** A car that may have come in, on a day it may have had. */
export interface Suspect {
  /** Place of its name in the list. */
  readonly name: number;
  /** Chance before anything is asked. */
  readonly weight: number;
  /** Chance of each answer to each question, "I can't say" at the end. */
  readonly says: Readonly<Record<Asked, readonly number[]>>;
}

/** What is weighed: names of the list with their cars, by place. */
export interface Car {
  readonly name: number;
  readonly weight: number;
  /** True answer to each question, by place; null where any is as likely. */
  readonly truth: Readonly<Record<Asked, number | null>>;
  /** Where a restart helps now and then. */
  readonly restartHelps?: boolean;
}

/** Chance of each answer where the true one is known, "I can't say" at the end. */
function chancesOf(question: Asked, truth: number | null): readonly number[] {
  const count = ANSWERS[question].length;
  const others = 1 - TRUE - UNSURE;
  const known = ANSWERS[question].map((_answer, i) =>
    truth === null ? (1 - UNSURE) / count : i === truth ? TRUE : others / (count - 1),
  );
  return [...known, UNSURE];
}

/** One of them for each true answer is enough. */
const known = new Map<string, readonly number[]>();
function knownChances(question: Asked, truth: number | null): readonly number[] {
  const key = `${question} ${truth}`;
  const there = known.get(key) ?? chancesOf(question, truth);
  known.set(key, there);
  return there;
}

export const suspectOf = ({ name, weight, truth, restartHelps }: Car): Suspect => ({
  name,
  weight,
  says: {
    ...(Object.fromEntries(
      ASKED.map((question) => [question, knownChances(question, truth[question])]),
    ) as Suspect['says']),
    ...(restartHelps === true && { restart: [HELPS, 1 - UNSURE - HELPS, UNSURE] }),
  },
});

/** An answer that was given, by place. */
export type Given = Readonly<Partial<Record<Asked, number | undefined>>>;

/** Share of each suspect after the answers; sums to 1. */
export function sharesAfter(suspects: readonly Suspect[], given: Given): readonly number[] {
  const weights = suspects.map(({ weight, says }) =>
    ASKED.reduce((product, question) => {
      const answer = given[question];
      return answer === undefined ? product : product * (says[question][answer] ?? 0);
    }, weight),
  );
  const all = weights.reduce((sum, one) => sum + one, 0);
  return weights.map((one) => one / all);
}

/** Share of each name. */
export function byName(
  suspects: readonly Pick<Suspect, 'name'>[],
  shares: readonly number[],
  names: number,
): readonly number[] {
  const of = Array.from({ length: names }, () => 0);
  suspects.forEach(({ name }, i) => (of[name] = (of[name] ?? 0) + (shares[i] ?? 0)));
  return of;
}

/** What is not known of a list with these shares [bits]; 2 to the power of it is the length of an even list as open. */
export const entropy = (shares: readonly number[]): number =>
  shares.reduce((sum, p) => (p > 0 ? sum - p * Math.log2(p) : sum), 0);

/** How long a list of even chances would be that is as open as this one. */
export const asGoodAs = (shares: readonly number[]): number => 2 ** entropy(shares);

/**
 * What an answer tells of the name on the average, before it is given [bits]: what is not known of the name, less what is
 * still not known after each answer, weighed by the chance of that answer.
 */
export function tells(
  shares: readonly number[],
  /** Chance of each answer, suspect by suspect. */
  says: readonly (readonly number[])[],
  toNames: (shares: readonly number[]) => readonly number[],
): number {
  const answers = says[0]?.length ?? 0;
  let left = 0;
  for (let answer = 0; answer < answers; answer += 1) {
    const joint = shares.map((share, i) => share * (says[i]?.[answer] ?? 0));
    const chance = joint.reduce((sum, p) => sum + p, 0);
    if (chance > 0) left += chance * entropy(toNames(joint.map((p) => p / chance)));
  }
  return Math.max(0, entropy(toNames(shares)) - left);
}

/** What the answer to a question tells of the name [bits]. */
export const worthOf = (
  suspects: readonly Suspect[],
  shares: readonly number[],
  names: number,
  question: Asked,
): number =>
  tells(
    shares,
    suspects.map(({ says }) => says[question]),
    (some) => byName(suspects, some, names),
  );

/** Every day alike. */
export const DAY_SHARE = 1 / DAYS.length;
