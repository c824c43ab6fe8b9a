/** The rounds of questions under way at the end of lessons. Their answers are in the log of answers, by the seed. */
import { keeper, type Area, type Keeper } from './envelope.ts';
import { isCount, isRecord, type Form } from './versioned.ts';

export interface LessonRound {
  /** When it was begun or taken up [ms of Unix time]. */
  readonly begun: number;
  /** Order of questions and options follows from it, and the answers of the round carry it. */
  readonly seed: number;
  /** The questions, as they were drawn. */
  readonly items: readonly string[];
}
export interface LessonRounds {
  readonly byLesson: Readonly<Record<string, LessonRound>>;
}

/** Longer ago [ms] the questions are to be asked afresh: what was known then is not known now. */
const STANDS_MS = 7 * 24 * 3_600_000;

const isRound = (value: unknown): value is LessonRound =>
  isRecord(value) &&
  isCount(value['begun']) &&
  Number.isFinite(value['seed']) &&
  Array.isArray(value['items']) &&
  value['items'].every((one) => typeof one === 'string');

function parse(data: unknown): LessonRounds | undefined {
  const byLesson = isRecord(data) ? data['byLesson'] : undefined;
  if (!isRecord(byLesson)) return undefined;
  const rounds = Object.entries(byLesson);
  const good = rounds.filter((one): one is [string, LessonRound] => isRound(one[1]));
  return good.length === rounds.length ? { byLesson: Object.fromEntries(good) } : undefined;
}

export const lessonRoundsForm: Form<LessonRounds> = { name: 'lesson-rounds', version: 1, parse };

export const lessonRoundsKeeper = (area?: Area): Keeper<LessonRounds> =>
  keeper({ ...lessonRoundsForm, empty: { byLesson: {} }, area });

/** Also false for one that a clock set forward has left behind. */
const stands = ({ begun }: LessonRound, now: number): boolean =>
  now - begun <= STANDS_MS && begun - now <= STANDS_MS;

export function roundOfLesson(
  { byLesson }: LessonRounds,
  lesson: string,
  now: number,
): LessonRound | undefined {
  const round = byLesson[lesson];
  return round && stands(round, now) ? round : undefined;
}

/** With this one in its place, or without any where it is over; those that stand no longer go. */
export function withRound(
  { byLesson }: LessonRounds,
  lesson: string,
  round: LessonRound | undefined,
  now: number,
): LessonRounds {
  const others = Object.entries(byLesson).filter(([id, one]) => id !== lesson && stands(one, now));
  return { byLesson: Object.fromEntries(round ? [...others, [lesson, round]] : others) };
}
