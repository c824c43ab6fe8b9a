import type { Entries, Entry } from './entry.ts';

export type NumberTable = ReadonlyMap<string, Entry>;

/**
 * All parts in one table; throws where one id is given twice. A file whose numbers come out of functions gives a list of
 * parts, because a spread would pass over an id that is there already.
 */
export function tableOf(
  parts: Readonly<Record<string, Entries | readonly Entries[]>>,
): NumberTable {
  const table = new Map<string, Entry>();
  const homes = new Map<string, string>();
  for (const [file, entries] of Object.entries(parts)) {
    for (const [id, entry] of [entries].flat().flatMap((part) => Object.entries(part))) {
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
