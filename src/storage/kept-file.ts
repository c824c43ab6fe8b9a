/** Records as a file, to keep elsewhere or to take to another device. */
import { isCount, isRecord } from './versioned.ts';

/** `foreign`: text of something else. `newer`: a later version of the site wrote it. `broken`: ours, and damaged. */
export type FileFault = 'notText' | 'foreign' | 'newer' | 'broken' | 'empty';
export type RecordsInFile<Of> =
  | { readonly ok: true; readonly records: readonly Of[]; readonly unreadable: number }
  | { readonly ok: false; readonly fault: FileFault };

interface FileKind<Of> {
  /** What the file says it is. */
  readonly kind: string;
  /** What it is written as; `read` knows all forms before it as well. */
  readonly version: number;
  /** The key that the records stand under. */
  readonly place: string;
  readonly read: (given: unknown) => Of | undefined;
}

export interface RecordFile<Of> {
  /** Marks of deletions go along, so that the other device deletes as well. `beside`: what else the file carries. */
  readonly write: (records: readonly Of[], beside?: Readonly<Record<string, unknown>>) => string;
  /** Reads a file; a damaged record in it keeps no other from being read. */
  readonly read: (given: string) => RecordsInFile<Of>;
}

export function recordFile<Of>({ kind, version, place, read }: FileKind<Of>): RecordFile<Of> {
  const no = (fault: FileFault): RecordsInFile<Of> => ({ ok: false, fault });
  return {
    write: (records, beside = {}) =>
      `${JSON.stringify({ kind, version, [place]: records, ...beside }, null, 1)}\n`,

    read(given) {
      const text = given.replace(/^\ufeff/, '').trim();
      if (text === '') return no('empty');
      if (text.includes('\u0000')) return no('notText');
      let data: unknown;
      try {
        data = JSON.parse(text);
      } catch {
        return no(text.includes(kind) ? 'broken' : 'foreign');
      }
      if (!isRecord(data) || data['kind'] !== kind) return no('foreign');
      const { version: written, [place]: list } = data;
      if (typeof written === 'number' && written > version) return no('newer');
      if (!isCount(written) || written < 1 || !Array.isArray(list)) return no('broken');
      const all = (list as unknown[]).map(read);
      const records = all.filter((record) => record !== undefined);
      if (records.length === 0 && all.length > 0) return no('broken');
      return { ok: true, records, unreadable: all.length - records.length };
    },
  };
}
