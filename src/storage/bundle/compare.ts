/** The dry run: what taking a file in would do to what is here. Pure; nothing is written by it. */
import { MOST_PAST } from '../rehearsals.ts';
import { MOST_VISITS } from '../visits.ts';
import type { Bundle } from './bundle.ts';
import { compareRecords, type RecordsCompared } from './compare-records.ts';
import { compareNames, type Names } from './merge-parts.ts';
import { seedsOf, underWayFrom } from './merge-rehearsals.ts';
import { missingFrom } from './missing-answers.ts';
import { recordNames, type Records } from './records.ts';
import { ways } from './ways.ts';
import { isSame } from '../same.ts';

export type OneCompared = 'neither' | 'same' | 'added' | 'hereOnly' | 'differs';

interface NamesInRoom extends Names {
  /** How many would have to go because there is no place for all. */
  readonly dropped: number;
}

export interface Comparison extends Readonly<Record<keyof Records, RecordsCompared>> {
  readonly answers: {
    readonly added: number;
    readonly same: number;
    readonly hereOnly: number;
    /** In the file with a date after today: its device's clock was wrong, or this one's is. */
    readonly ahead: number;
  };
  readonly lessons: Names;
  readonly plan: OneCompared;
  readonly settings: OneCompared;
  readonly cases: NamesInRoom;
  /** The one under way. */
  readonly rehearsal: OneCompared;
  /** Those that were handed in, by when they were begun. */
  readonly rehearsed: NamesInRoom;
  readonly columns: Names;
}

const DAY_MS = 86_400_000;

function one(here: unknown, file: unknown): OneCompared {
  if (here === null) return file === null ? 'neither' : 'added';
  if (file === null) return 'hereOnly';
  return isSame(here, file) ? 'same' : 'differs';
}

const named = (names: readonly string[]): Readonly<Record<string, true>> =>
  Object.fromEntries(names.map((name) => [name, true]));
const byHeader = ({ columns }: Bundle): Readonly<Record<string, unknown>> =>
  Object.fromEntries((columns?.tools ?? []).map((tool) => [tool.header, tool]));

/** Whether its answers have reached the log tells nothing of a rehearsal. */
const byBegun = ({ rehearsed }: Bundle): Readonly<Record<string, unknown>> =>
  Object.fromEntries(
    (rehearsed?.rehearsals ?? []).map((past) => [past.begun, { ...past, logged: true }]),
  );

function inRoom(names: Names, room: number): NamesInRoom {
  const { added, same, differ, hereOnly } = names;
  const all = added.length + same.length + differ.length + hereOnly.length;
  return { ...names, dropped: Math.max(0, all - room) };
}

export function compare(here: Bundle, file: Bundle, now: number): Comparison {
  const added = missingFrom(here.answers, file.answers, seedsOf(here, file)).length;
  const same = file.answers.length - added;
  const cases = compareNames(here.visits?.byCase ?? {}, file.visits?.byCase ?? {});
  return {
    answers: {
      added,
      same,
      hereOnly: here.answers.length - same,
      ahead: file.answers.filter(({ at }) => at > now + DAY_MS).length,
    },
    lessons: compareNames(named(here.progress?.done ?? []), named(file.progress?.done ?? [])),
    plan: one(here.plan, file.plan),
    settings: one(here.settings, file.settings),
    cases: inRoom(cases, MOST_VISITS),
    rehearsal: one(here.rehearsal?.rehearsal ?? null, underWayFrom(here, file)),
    rehearsed: inRoom(compareNames(byBegun(here), byBegun(file)), MOST_PAST),
    columns: compareNames(byHeader(here), byHeader(file)),
    jobs: compareRecords(here.jobs, file.jobs, ways.jobs),
    sheets: compareRecords(here.sheets, file.sheets, ways.sheets),
    meetings: compareRecords(here.meetings, file.meetings, ways.meetings),
  };
}

/** Parts of which both sides have something that cannot stand beside the other: whose counts must be chosen. */
export type Chosen = 'plan' | 'rehearsal' | 'settings' | 'cases' | keyof Records;

export function toChoose(compared: Comparison): readonly Chosen[] {
  const { plan, rehearsal, settings, cases } = compared;
  const loses = ({ replaced, deleted }: RecordsCompared): boolean =>
    replaced.length + deleted.length > 0;
  return [
    ...(plan === 'differs' ? ['plan' as const] : []),
    ...(rehearsal === 'differs' ? ['rehearsal' as const] : []),
    ...(settings === 'differs' ? ['settings' as const] : []),
    ...(cases.differ.length > 0 ? ['cases' as const] : []),
    ...recordNames.filter((name) => loses(compared[name])),
  ];
}

/** True if taking it in would change nothing, whatever is chosen. */
export const bringsNothing = (compared: Comparison): boolean => {
  const { answers, lessons, plan, rehearsal, rehearsed, settings, cases, columns } = compared;
  const records = recordNames.map((name) => compared[name]);
  const fresh = [lessons, cases, rehearsed, columns, ...records].map(({ added }) => added.length);
  const fuller = records.map(({ completed }) => completed.length);
  return (
    answers.added === 0 &&
    [...fresh, ...fuller].every((count) => count === 0) &&
    plan !== 'added' &&
    rehearsal !== 'added' &&
    settings !== 'added' &&
    toChoose(compared).length === 0
  );
};
