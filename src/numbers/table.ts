import type { Entries, Entry } from './entry.ts';

export type NumberTable = ReadonlyMap<string, Entry>;

/** All parts in one table; throws where two files give one id. */
export function tableOf(parts: Readonly<Record<string, Entries>>): NumberTable {
  const table = new Map<string, Entry>();
  const homes = new Map<string, string>();
  for (const [file, entries] of Object.entries(parts)) {
    for (const [id, entry] of Object.entries(entries)) {
      const home = homes.get(id);
      if (home !== undefined)
        throw new Error(
          `The number "${id}" stands in src/numbers/${home} and again in src/numbers/${file}. One id is one number: rename one, or use the one that is there.`,
        );
      homes.set(id, file);
      table.set(id, entry);
    }
  }
  return table;
}
