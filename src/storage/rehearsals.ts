/**
 * Rehearsals as this device remembers them: the one under way with every answer as it stands, and those that were handed in. They
 * lie in two places, because the first is written with every answer and the others hardly ever.
 */
import type { RetrievalAnswer } from './answer.ts';
import { keeper, type Area, type Keeper } from './envelope.ts';
import { isCertainty, isGiven, isText } from './given.ts';
import { isRecord, type Form } from './versioned.ts';

export interface RehearsalItem {
  readonly id: string;
  readonly lesson: string;
  /** As the blueprint names it. */
  readonly area: string;
  /** Which of its variants is asked, where the question varies; once it was on show. */
  readonly variant?: string | undefined;
  readonly given?: RetrievalAnswer['given'] | undefined;
  readonly certainty?: RetrievalAnswer['certainty'] | undefined;
  readonly flagged?: boolean | undefined;
  /** Set when it was handed in; left out where it was not answered. */
  readonly result?: RetrievalAnswer['result'] | undefined;
}
export interface Rehearsal {
  /** When [ms of Unix time]; it is its name, and the seed that its order follows from. */
  readonly begun: number;
  /** When it was handed in [ms of Unix time]; null while it is under way. */
  readonly ended: number | null;
  /** What the clock has run [s]. */
  readonly seconds: number;
  /** Whether the clock is on. */
  readonly timed: boolean;
  /** The question on show, from 0. */
  readonly place: number;
  readonly items: readonly RehearsalItem[];
  /** All of its answers have reached the log. */
  readonly logged: boolean;
}
export interface UnderWay {
  readonly rehearsal: Rehearsal | null;
}
export interface Past {
  /** The latest first. */
  readonly rehearsals: readonly Rehearsal[];
}

/** As many that were handed in are remembered. */
export const MOST_PAST = 20;
/** To the end of the year 9999: what is later is no day. */
const LATEST = 253_402_300_799_000;

const isAmount = (value: unknown): value is number =>
  typeof value === 'number' && Number.isFinite(value) && value >= 0;
const isTime = (value: unknown): value is number =>
  Number.isInteger(value) && isAmount(value) && value <= LATEST;
const oneOf = <const All extends readonly unknown[]>(
  all: All,
  value: unknown,
): value is All[number] | undefined => value === undefined || all.includes(value);

function parseItem(value: unknown): RehearsalItem | undefined {
  if (!isRecord(value)) return undefined;
  const { id, lesson, area, variant, given, certainty, flagged, result } = value;
  if (!isText(id) || !isText(lesson) || !isText(area)) return undefined;
  if (given !== undefined && !isGiven(given)) return undefined;
  if (variant !== undefined && !isText(variant)) return undefined;
  if (certainty !== undefined && !isCertainty(certainty)) return undefined;
  if (!oneOf([true, false], flagged)) return undefined;
  if (!oneOf(['right', 'partial', 'wrong'], result)) return undefined;
  return { id, lesson, area, variant, given, certainty, flagged, result };
}

function parseRehearsal(value: unknown): Rehearsal | undefined {
  if (!isRecord(value) || !Array.isArray(value['items'])) return undefined;
  const { begun, ended, seconds, timed, place, logged } = value;
  if (!isTime(begun) || !isAmount(seconds) || !isAmount(place)) return undefined;
  if (ended !== null && !isTime(ended)) return undefined;
  if (typeof timed !== 'boolean' || typeof logged !== 'boolean') return undefined;
  const read = value['items'].map(parseItem);
  const items = read.filter((item) => item !== undefined);
  if (items.length !== read.length || items.length === 0) return undefined;
  if (!Number.isInteger(place) || place >= items.length) return undefined;
  return { begun, ended, seconds, timed, place, items, logged };
}

function parseUnderWay(data: unknown): UnderWay | undefined {
  if (!isRecord(data)) return undefined;
  if (data['rehearsal'] === null) return { rehearsal: null };
  const rehearsal = parseRehearsal(data['rehearsal']);
  return rehearsal && { rehearsal };
}

function parsePast(data: unknown): Past | undefined {
  const list = isRecord(data) ? data['rehearsals'] : undefined;
  if (!Array.isArray(list)) return undefined;
  const read = list.map(parseRehearsal);
  const rehearsals = read.filter((one) => one !== undefined);
  return rehearsals.length === read.length ? { rehearsals } : undefined;
}

export const underWayForm: Form<UnderWay> = {
  ...{ name: 'rehearsal', version: 1 },
  parse: parseUnderWay,
};
export const pastForm: Form<Past> = { name: 'rehearsals-past', version: 1, parse: parsePast };

export const underWayKeeper = (area?: Area): Keeper<UnderWay> =>
  keeper({ ...underWayForm, empty: { rehearsal: null }, area });
export const pastKeeper = (area?: Area): Keeper<Past> =>
  keeper({ ...pastForm, empty: { rehearsals: [] }, area });

/** With this one in its place, and no more than are remembered. */
export const withPast = ({ rehearsals }: Past, one: Rehearsal): Past => ({
  rehearsals: [one, ...rehearsals.filter(({ begun }) => begun !== one.begun)]
    .sort((a, b) => b.begun - a.begun)
    .slice(0, MOST_PAST),
});
