/**
 * Tables of the planner that were worked out on this device, by what they were worked out from. Nobody's work: what cannot be
 * read is worked out again, and what is kept longest goes first.
 */
import { connection } from '../connection.ts';

const TABLES = 'tables';
const NAME = 'hot-clutch:tables';
/** At 60 kB each, no more than a picture. */
const MOST = 30;

interface KeptTable {
  readonly fingerprint: string;
  readonly at: number;
  readonly text: string;
}
const isKept = (given: unknown): given is KeptTable =>
  typeof given === 'object' &&
  given !== null &&
  typeof (given as Partial<KeptTable>).fingerprint === 'string' &&
  typeof (given as Partial<KeptTable>).at === 'number' &&
  typeof (given as Partial<KeptTable>).text === 'string';

export function tableStore(name = NAME) {
  const { database, whole, close } = connection({
    name,
    version: 1,
    upgrade: (opened) => {
      opened.createObjectStore(TABLES, { keyPath: 'fingerprint' });
    },
  });
  return {
    /** The text of a table; undefined where there is none, or where the browser keeps nothing. */
    async read(fingerprint: string): Promise<string | undefined> {
      try {
        const kept: unknown = await (await database()).get(TABLES, fingerprint);
        return isKept(kept) ? kept.text : undefined;
      } catch {
        return undefined;
      }
    },
    write: (fingerprint: string, text: string, at: number) =>
      whole(async () => {
        const transaction = (await database()).transaction(TABLES, 'readwrite');
        const kept: unknown[] = await transaction.store.getAll();
        const oldest = kept
          .filter(isKept)
          .filter((one) => one.fingerprint !== fingerprint)
          .sort((a, b) => b.at - a.at)
          .slice(MOST - 1);
        await Promise.all([
          ...oldest.map((one) => transaction.store.delete(one.fingerprint)),
          transaction.store.put({ fingerprint, at, text } satisfies KeptTable),
          transaction.done,
        ]);
      }),
    close,
  };
}
export type TableStore = ReturnType<typeof tableStore>;
