/** What this device and a file make together, part by part. Pure: the store and the dry run both go by it. */
import type { LogColumns } from '../log-columns.ts';
import { MOST_TOOLS } from '../log-columns.ts';
import type { Plan } from '../plan.ts';
import type { Progress } from '../progress.ts';
import type { Settings } from '../settings.ts';
import { MOST_VISITS, type Visits } from '../visits.ts';
import { isSame } from '../same.ts';

/** Whose counts where both have something and it is not the same. */
export type Side = 'here' | 'file';

/** What can only be one or the other. Where one side has none, the other one counts. */
export function oneOf<T extends Plan | Settings>(here: T | null, file: T | null, side: Side) {
  if (here === null || file === null) return here ?? file;
  return side === 'here' ? here : file;
}

/** Lessons done on either side are done; the place to read on from is that of this device, if it has one. */
export function mergeProgress(here: Progress | null, file: Progress | null): Progress | null {
  if (here === null || file === null) return here ?? file;
  return { done: [...new Set([...here.done, ...file.done])], last: here.last ?? file.last };
}

/** Cars of both; of those that do not fit any more the ones longest untouched go. */
export function mergeVisits(here: Visits | null, file: Visits | null, side: Side): Visits | null {
  if (here === null || file === null) return here ?? file;
  const [first, second] = side === 'here' ? [here, file] : [file, here];
  const all = Object.entries({ ...second.byCase, ...first.byCase });
  const latest = all.sort(([, a], [, b]) => b.serial - a.serial).slice(0, MOST_VISITS);
  return { byCase: Object.fromEntries(latest) };
}

/** How logs are read, by their headers; of the same header as it is read here. */
export function mergeColumns(here: LogColumns | null, file: LogColumns | null): LogColumns | null {
  if (here === null || file === null) return here ?? file;
  const known = new Set(here.tools.map(({ header }) => header));
  const fresh = file.tools.filter(({ header }) => !known.has(header));
  return { tools: [...here.tools, ...fresh].slice(0, MOST_TOOLS) };
}

/** How the entries of two lists by name compare. */
export interface Names {
  /** In the file alone. */
  readonly added: readonly string[];
  readonly same: readonly string[];
  readonly differ: readonly string[];
  readonly hereOnly: readonly string[];
}

export function compareNames(
  here: Readonly<Record<string, unknown>>,
  file: Readonly<Record<string, unknown>>,
): Names {
  const there = Object.keys(file);
  const both = there.filter((name) => Object.hasOwn(here, name));
  return {
    added: there.filter((name) => !Object.hasOwn(here, name)),
    same: both.filter((name) => isSame(here[name], file[name])),
    differ: both.filter((name) => !isSame(here[name], file[name])),
    hereOnly: Object.keys(here).filter((name) => !Object.hasOwn(file, name)),
  };
}
