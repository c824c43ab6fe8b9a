/** Sheets that come with something that runs on them, brought together with those that are here. */
import { isSheetDeleted, mergeSheets, withSheetDeleted, type OwnSheet } from './own-sheet.ts';

export interface Brought {
  /** To be kept. */
  readonly sheets: readonly OwnSheet[];
  /** How many of them were not here before. */
  readonly added: number;
  /** Of a sheet that is not kept because the same is here under another id: the id of that one. */
  readonly instead: ReadonlyMap<string, string>;
  /** Names that two different sheets have now. */
  readonly sameName: readonly string[];
}

/** What was typed, whenever that was. */
const typedOn = ({ name, fields }: OwnSheet): string =>
  JSON.stringify([
    name.value,
    Object.entries(fields)
      .flatMap(([path, { value }]) => (value === null ? [] : [[path, value.text, value.units]]))
      .sort(([a = ''], [b = '']) => (a < b ? -1 : 1)),
  ]);

export function bringSheets(
  here: readonly OwnSheet[],
  given: readonly OwnSheet[],
  now: number,
): Brought {
  const all = new Map(here.map((sheet) => [sheet.id, sheet]));
  const changed = new Set<string>();
  const instead = new Map<string, string>();
  const sameName: string[] = [];
  let added = 0;
  const standing = (): readonly OwnSheet[] =>
    [...all.values()].filter((sheet) => !isSheetDeleted(sheet));
  for (const sheet of given) {
    const there = all.get(sheet.id);
    const twin = there ? undefined : standing().find((one) => typedOn(one) === typedOn(sheet));
    if (twin) {
      instead.set(sheet.id, twin.id);
      continue;
    }
    const merged = there ? mergeSheets(there, sheet) : sheet;
    // Something runs on it: a deletion here does not take that away.
    const kept = isSheetDeleted(merged) ? withSheetDeleted(merged, now, false) : merged;
    if (JSON.stringify(kept) === JSON.stringify(there)) continue;
    if (there === undefined || isSheetDeleted(there)) {
      added += 1;
      if (standing().some(({ name }) => name.value === kept.name.value))
        sameName.push(kept.name.value);
    }
    all.set(kept.id, kept);
    changed.add(kept.id);
  }
  return {
    sheets: [...all.values()].filter(({ id }) => changed.has(id)),
    added,
    instead,
    sameName,
  };
}
