/** What a device keeps, all of it. Stores are handed in, so that a test can break them. */
import { answerLog, type AnswerLog } from '../answer-log.ts';
import type { StoreStatus } from '../connection.ts';
import type { Area, Keeper } from '../envelope.ts';
import { jobStore, type JobStore } from '../jobs/job-store.ts';
import { logColumnsKeeper } from '../log-columns.ts';
import { meetingStore, type MeetingStore } from '../meetings/meeting-store.ts';
import { planKeeper } from '../plan.ts';
import { progressKeeper } from '../progress.ts';
import { readAnswers } from '../read-answers.ts';
import { pastKeeper, underWayKeeper } from '../rehearsals.ts';
import { settingsKeeper } from '../settings.ts';
import { sheetStore, type SheetStore } from '../sheets/sheet-store.ts';
import { visitKeeper } from '../visits.ts';
import { inOrder } from './merge-rehearsals.ts';
import { partNames, type Bundle, type Parts } from './bundle.ts';
import { recordNames, type Records } from './records.ts';

export type Keepers = { readonly [Part in keyof Parts]: Keeper<NonNullable<Parts[Part]>> };
export interface Device {
  readonly log: AnswerLog;
  readonly jobs: JobStore;
  readonly sheets: SheetStore;
  readonly meetings: MeetingStore;
  readonly keepers: Keepers;
  readonly now: () => number;
}

export function device(now: () => number = Date.now, area?: Area): Device {
  return {
    log: answerLog(),
    jobs: jobStore(),
    sheets: sheetStore(),
    meetings: meetingStore(),
    keepers: {
      plan: planKeeper(area),
      progress: progressKeeper(area),
      visits: visitKeeper(area),
      columns: logColumnsKeeper(area),
      settings: settingsKeeper(area),
      rehearsal: underWayKeeper(area),
      rehearsed: pastKeeper(area),
    },
    now,
  };
}

export const closeDevice = async (device: Device): Promise<void> => {
  const stores = [device.log, ...recordNames.map((name) => device[name])];
  await Promise.all(stores.map((store) => store.close()));
};

/** Where something is kept: the log of answers, the stores of records, and browser storage. */
export type Place = 'answers' | keyof Records | 'parts';
export type Fault = Exclude<StoreStatus, 'ok'>;
export type Faults = Partial<Record<Place, Fault>>;

export const faultIn = (statuses: Readonly<Record<Place, StoreStatus>>): Faults =>
  Object.fromEntries(Object.entries(statuses).filter(([, status]) => status !== 'ok'));

export interface Gathered {
  readonly bundle: Bundle;
  /** Places that could not be read; the bundle has nothing of them. */
  readonly faults: Faults;
  /** Entries that cannot be understood, which stay where they lie and are in no file. */
  readonly unreadable: number;
}

export async function gather({
  log,
  jobs,
  sheets,
  meetings,
  keepers,
  now,
}: Device): Promise<Gathered> {
  const at = now();
  const [answers, ofJobs, ofSheets, ofMeetings] = await Promise.all([
    readAnswers(log),
    jobs.read(at),
    sheets.read(at),
    meetings.read(at),
  ]);
  const read = partNames.map((part) => [part, keepers[part].read()] as const);
  const statuses = read.map(([, { status }]) => status);
  const had = (status: string): boolean => status === 'ok' || status === 'recovered';
  const parts = Object.fromEntries(
    read.map(([part, { data, status }]) => [part, had(status) ? data : null]),
  ) as unknown as Parts;
  return {
    bundle: {
      ...parts,
      ...inOrder(parts),
      name: null,
      written: at,
      answers: answers.answers.map(({ at: given, answer }) => ({ at: given, answer })),
      jobs: ofJobs.records,
      sheets: ofSheets.records,
      meetings: ofMeetings.records,
    },
    faults: faultIn({
      answers: answers.status,
      jobs: ofJobs.status,
      sheets: ofSheets.status,
      meetings: ofMeetings.status,
      parts: statuses.find((one) => one === 'blocked' || one === 'newer') ?? 'ok',
    }),
    unreadable:
      answers.damaged.length +
      ofJobs.damaged.length +
      ofSheets.damaged.length +
      ofMeetings.damaged.length +
      statuses.filter((status) => status === 'unreadable').length,
  };
}
