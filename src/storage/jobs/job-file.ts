/** Jobs as a file, to keep elsewhere or to take to another device. */
import type { Job } from './job.ts';
import { readJob } from './job-form.ts';

const KIND = 'hot-clutch:jobs';
const VERSION = 1;

/** `foreign`: text of something else. `newer`: a later version of the site wrote it. `broken`: ours, and damaged. */
export type FileFault = 'notText' | 'foreign' | 'newer' | 'broken' | 'empty';
export type FileRead =
  | { readonly ok: true; readonly jobs: readonly Job[]; readonly unreadable: number }
  | { readonly ok: false; readonly fault: FileFault };

/** Marks of deletions go along, so that the other device deletes as well. */
export const fileOf = (jobs: readonly Job[]): string =>
  `${JSON.stringify({ kind: KIND, version: VERSION, jobs }, null, 1)}\n`;

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const no = (fault: FileFault): FileRead => ({ ok: false, fault });

/** Reads a file; a damaged job in it keeps no other from being read. */
export function readFile(given: string): FileRead {
  const text = given.replace(/^\ufeff/, '').trim();
  if (text === '') return no('empty');
  if (text.includes('\u0000')) return no('notText');
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return no(text.includes(KIND) ? 'broken' : 'foreign');
  }
  if (!isObject(data) || data['kind'] !== KIND) return no('foreign');
  const { version, jobs } = data;
  if (typeof version === 'number' && version > VERSION) return no('newer');
  if (version !== VERSION || !Array.isArray(jobs)) return no('broken');
  const read = (jobs as unknown[]).map(readJob);
  const good = read.filter((job) => job !== undefined);
  if (good.length === 0 && read.length > 0) return no('broken');
  return { ok: true, jobs: good, unreadable: read.length - good.length };
}
