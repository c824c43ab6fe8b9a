/** A meeting of one's own in a link: `#meeting=2.` and its words. Reading never throws. */
import { readOwnPlan, type OwnPlan } from '../storage/meetings/own-meeting.ts';

/** What mail and messengers carry without cutting it [characters], the whole address. */
export const LONGEST_LINK = 2000;
/** 1, which is read as well: a vote says why of the right option alone. */
const VERSION = 2;
const START = '#meeting=';

export type LinkRead =
  | { readonly ok: true; readonly plan: OwnPlan }
  /** `none`: the address is about something else. `other`: another version of the site wrote it. */
  | { readonly ok: false; readonly fault: 'none' | 'long' | 'other' | 'broken' };

const toText = (bytes: Uint8Array): string =>
  btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''))
    .replaceAll('+', '-')
    .replaceAll('/', '_')
    .replace(/=+$/, '');

const toBytes = (text: string): Uint8Array =>
  Uint8Array.from(atob(text.replaceAll('-', '+').replaceAll('_', '/')), (char) =>
    char.charCodeAt(0),
  );

/** @returns undefined if the whole address would be too long to survive a messenger */
export function printOwnLink(page: string, plan: OwnPlan): string | undefined {
  const bytes = new TextEncoder().encode(JSON.stringify(plan));
  const link = `${page}${START}${VERSION}.${toText(bytes)}`;
  return link.length <= LONGEST_LINK ? link : undefined;
}

export function readOwnLink(hash: string): LinkRead {
  const no = (fault: Extract<LinkRead, { ok: false }>['fault']): LinkRead => ({ ok: false, fault });
  if (!hash.startsWith(START)) return no('none');
  if (hash.length > LONGEST_LINK) return no('long');
  const [, version, text] = /^([1-9]\d{0,2})\.([\w-]*)$/.exec(hash.slice(START.length)) ?? [];
  if (version === undefined || text === undefined) return no('broken');
  if (Number(version) > VERSION) return no('other');
  try {
    const words = new TextDecoder('utf-8', { fatal: true }).decode(toBytes(text));
    const plan = readOwnPlan(JSON.parse(words));
    return plan ? { ok: true, plan } : no('broken');
  } catch {
    return no('broken');
  }
}
