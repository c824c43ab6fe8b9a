/**
 * What a meeting under way has counted, until the tab is closed: hands, the clock, the name that a second window finds it by. Session
 * storage, so that no other tab and no later day sees any of it.
 */
import { isRecord } from './versioned.ts';

const KEY = 'hot-clutch:meeting';
const VERSION = 1;

export interface MeetingSession {
  /** Which meeting, with all that would make its hands another vote's. */
  readonly meeting: string;
  readonly channel: string;
  /** By the number of the scene. */
  readonly hands: Readonly<Record<string, readonly number[]>>;
  readonly clock: { readonly ran: number; readonly since: number | null };
}

const isTime = (value: unknown): value is number =>
  typeof value === 'number' && Number.isFinite(value) && value >= 0;
const isHands = (value: unknown): value is readonly number[] =>
  Array.isArray(value) && value.every(isTime);

/** Undefined where nothing fits, whatever lies there. */
export function readSession(meeting: string, area?: Storage): MeetingSession | undefined {
  try {
    const read: unknown = JSON.parse((area ?? sessionStorage).getItem(KEY) ?? 'null');
    if (!isRecord(read) || read['v'] !== VERSION || read['meeting'] !== meeting) return undefined;
    const { channel, hands, clock } = read;
    if (typeof channel !== 'string' || !isRecord(hands) || !isRecord(clock)) return undefined;
    const { ran, since } = clock;
    if (!Object.values(hands).every(isHands)) return undefined;
    if (!isTime(ran) || (since !== null && !isTime(since))) return undefined;
    return {
      ...{ meeting, channel, clock: { ran, since } },
      hands: hands as MeetingSession['hands'],
    };
  } catch {
    return undefined;
  }
}

/** A browser that keeps nothing loses the count at a reload, and nothing else. */
export function writeSession(session: MeetingSession, area?: Storage): void {
  try {
    (area ?? sessionStorage).setItem(KEY, JSON.stringify({ v: VERSION, ...session }));
  } catch {
    // Nothing to do: the page has it as long as it stands.
  }
}
