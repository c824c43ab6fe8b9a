/** Job sheets, or transmissions, of a file beside those that are here. */
import type { Dated } from '../dated.ts';
import type { Kept } from '../record-store.ts';
import { isSame } from '../same.ts';

export interface Ways<Of extends Kept> {
  readonly merge: (a: Of, b: Of) => Of;
  readonly isDeleted: (record: Of) => boolean;
  readonly nameOf: (record: Of) => string;
}

export interface RecordsCompared {
  /** Names of those that only the file has. */
  readonly added: readonly string[];
  readonly same: number;
  /** Names of those that get something from the file and lose nothing. */
  readonly completed: readonly string[];
  /** Names of those of which an entry here gives way to a later one. */
  readonly replaced: readonly string[];
  /** Names of those that were deleted on the other device, after they were last changed here. */
  readonly deleted: readonly string[];
  readonly hereOnly: number;
}

/** Everything with a time of its own in a record, by where it stands. */
function entriesOf(record: object, path = ''): readonly [string, Dated<unknown>][] {
  return Object.entries(record).flatMap(([key, value]: [string, unknown]) => {
    if (typeof value !== 'object' || value === null) return [];
    if ('at' in value && 'value' in value) return [[path + key, value as Dated<unknown>]];
    return entriesOf(value, `${path + key} `);
  });
}

/** True if something that was typed here would no longer stand. */
function losesEntries(here: object, merged: object): boolean {
  const after = new Map(entriesOf(merged));
  return entriesOf(here).some(
    ([place, { at, value }]) =>
      place !== 'deleted' && at > 0 && value !== '' && !isSame(after.get(place)?.value, value),
  );
}

export function compareRecords<Of extends Kept>(
  here: readonly Of[],
  file: readonly Of[],
  { merge, isDeleted, nameOf }: Ways<Of>,
): RecordsCompared {
  const there = new Map(here.map((record) => [record.id, record]));
  const named = { added: [], completed: [], replaced: [], deleted: [] } as Record<
    'added' | 'completed' | 'replaced' | 'deleted',
    string[]
  >;
  let same = 0;
  for (const record of file) {
    const own = there.get(record.id);
    const merged = own ? merge(own, record) : record;
    const stood = own !== undefined && !isDeleted(own);
    if (isDeleted(merged)) {
      if (stood) named.deleted.push(nameOf(own));
    } else if (!stood) named.added.push(nameOf(merged));
    else if (isSame(own, merged)) same += 1;
    else named[losesEntries(own, merged) ? 'replaced' : 'completed'].push(nameOf(merged));
  }
  const ids = new Set(file.map(({ id }) => id));
  const hereOnly = here.filter((one) => !ids.has(one.id) && !isDeleted(one)).length;
  return { ...named, same, hereOnly };
}

/** Those of the file that may be merged in: with `here`, none that would take something away. */
export function recordsToTake<Of extends Kept>(
  here: readonly Of[],
  file: readonly Of[],
  { merge, isDeleted }: Ways<Of>,
  side: 'here' | 'file',
): readonly Of[] {
  if (side === 'file') return file;
  const there = new Map(here.map((record) => [record.id, record]));
  return file.filter((record) => {
    const own = there.get(record.id);
    if (own === undefined) return true;
    const merged = merge(own, record);
    return !losesEntries(own, merged) && (isDeleted(own) || !isDeleted(merged));
  });
}
