/** Takes a file in: adds what is missing, changes only what was chosen, and says how to take it back. */
import type { StoreStatus } from '../connection.ts';
import type { Keeper } from '../envelope.ts';
import type { Kept, RecordStore, Written } from '../record-store.ts';
import { isSame } from '../same.ts';
import type { Bundle, Parts } from './bundle.ts';
import type { Chosen } from './compare.ts';
import { recordsToTake, type Ways } from './compare-records.ts';
import { faultIn, type Device, type Faults } from './device.ts';
import { mergeColumns, mergeProgress, mergeVisits, oneOf, type Side } from './merge-parts.ts';
import { mergeRehearsed, mergeUnderWay, seedsOf } from './merge-rehearsals.ts';
import type { Records } from './records.ts';
import { takeAnswers, takeBack } from './take-answers.ts';
import { ways } from './ways.ts';

export type Sides = Readonly<Record<Chosen, Side>>;
const all = (side: Side): Sides => ({
  ...{ plan: side, rehearsal: side, settings: side, cases: side },
  ...{ jobs: side, sheets: side, meetings: side },
});
export const allHere = all('here');
export const allFile = all('file');

export interface Taken {
  /** Places that did not take their part; what the others took stands, and taking the file in again completes it. */
  readonly faults: Faults;
  /** Takes it back: what nobody has changed since. */
  readonly undo: () => Promise<Faults>;
}

interface Step {
  readonly status: StoreStatus;
  readonly undo: () => StoreStatus | Promise<StoreStatus>;
}
const nothing: Step = { status: 'ok', undo: () => 'ok' };

function takePart<T extends object>(keeper: Keeper<T>, merge: (here: T | null) => T | null): Step {
  const { data: before, status } = keeper.read();
  if (status === 'blocked' || status === 'newer') return { ...nothing, status };
  const none = status === 'nothing' || status === 'unreadable';
  const first = merge(none ? null : before);
  if (first === null || (!none && isSame(first, before))) return nothing;
  let after = first;
  const written = keeper.update((now) => {
    after = merge(none && isSame(now, before) ? null : now) ?? now;
    return after;
  });
  if (written !== 'ok') return { ...nothing, status: written };
  return {
    status: 'ok',
    undo: () => (isSame(keeper.read().data, after) ? keeper.update(() => before) : 'ok'),
  };
}

async function takeRecords<Of extends Kept>(
  store: RecordStore<Of>,
  file: readonly Of[],
  how: Ways<Of>,
  { side, now }: { readonly side: Side; readonly now: number },
): Promise<Step> {
  const read = await store.read(now);
  if (read.status !== 'ok') return { ...nothing, status: read.status };
  const there = new Map(read.records.map((record) => [record.id, record]));
  const taken = recordsToTake(read.records, file, how, side);
  if (taken.length === 0) return nothing;
  const status = await store.write(taken);
  if (status !== 'ok') return { ...nothing, status };
  const written = taken.map((wrote): Written<Of> => ({ was: there.get(wrote.id), wrote }));
  return { status, undo: () => store.restore(written) };
}

const worst = (all: readonly StoreStatus[]): StoreStatus =>
  all.find((status) => status !== 'ok') ?? 'ok';

/** Never throws. Answers come first: they are what cannot be typed again. */
export async function takeIn(device: Device, file: Bundle, sides: Sides): Promise<Taken> {
  const { log, keepers, now } = device;
  // What had been handed in before that of the file comes.
  const { data: rehearsed } = keepers.rehearsed.read();
  const here = { rehearsal: keepers.rehearsal.read().data, rehearsed };
  const { status, added } = await takeAnswers(log, file.answers, seedsOf(here, file));
  const at = now();
  const how = (name: keyof Records) => ({ side: sides[name], now: at });
  const jobs = await takeRecords(device.jobs, file.jobs, ways.jobs, how('jobs'));
  const sheets = await takeRecords(device.sheets, file.sheets, ways.sheets, how('sheets'));
  const meetings = await takeRecords(
    device.meetings,
    file.meetings,
    ways.meetings,
    how('meetings'),
  );
  const part = <Name extends keyof Parts>(
    name: Name,
    merge: (here: Parts[Name] | null, file: Parts[Name] | null) => NonNullable<Parts[Name]> | null,
  ): Step => {
    const keeper = keepers[name] as unknown as Keeper<NonNullable<Parts[Name]>>;
    return takePart(keeper, (here) => merge(here, file[name]));
  };
  const parts = [
    part('rehearsal', (rehearsal) =>
      mergeUnderWay({ rehearsal, rehearsed }, file, sides.rehearsal),
    ),
    part('rehearsed', mergeRehearsed),
    part('progress', mergeProgress),
    part('visits', (a, b) => mergeVisits(a, b, sides.cases)),
    part('columns', mergeColumns),
    part('plan', (a, b) => oneOf(a, b, sides.plan)),
    part('settings', (a, b) => oneOf(a, b, sides.settings)),
  ];
  return {
    faults: faultIn({
      answers: status,
      jobs: jobs.status,
      sheets: sheets.status,
      meetings: meetings.status,
      parts: worst(parts.map((one) => one.status)),
    }),
    undo: async () =>
      faultIn({
        answers: added.length === 0 ? 'ok' : await takeBack(log, added),
        jobs: await jobs.undo(),
        sheets: await sheets.undo(),
        meetings: await meetings.undo(),
        parts: worst(await Promise.all(parts.map(async (one) => await one.undo()))),
      }),
  };
}
