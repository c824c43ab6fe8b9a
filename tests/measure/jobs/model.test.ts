import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { StoreStatus } from '../../../src/storage/connection.ts';
import { jobFile } from '../../../src/storage/jobs/job-file.ts';
import { dated, merge, newJob, type Job } from '../../../src/storage/jobs/job.ts';
import { newSheet, type OwnSheet } from '../../../src/storage/sheets/own-sheet.ts';
import { makeJobs } from '../../../src/measure/jobs/model.ts';

/** A store in memory, with another tab's hand in it. */
function fakeStore() {
  const kept = new Map<string, Job>();
  let heard = (): void => undefined;
  const store = {
    kept,
    status: 'ok' as StoreStatus,
    left: [] as readonly Job[],
    writes: 0,
    hear: () => heard(),
    read: () => Promise.resolve({ status: store.status, records: [...kept.values()], damaged: [] }),
    write: (jobs: readonly Job[]) => {
      store.writes += 1;
      if (store.status === 'ok') {
        for (const job of jobs) {
          const there = kept.get(job.id);
          kept.set(job.id, there ? merge(there, job) : job);
        }
      }
      return Promise.resolve(store.status);
    },
    leave: (jobs: readonly Job[]) => {
      store.left = jobs;
    },
    watch: (listener: () => void) => {
      heard = listener;
      return () => undefined;
    },
  };
  return store;
}
let clock = 1000;
/** Transmissions of a device. */
function fakeSheets(...given: readonly OwnSheet[]) {
  const kept = new Map(given.map((sheet) => [sheet.id, sheet]));
  return {
    kept,
    status: 'ok' as StoreStatus,
    read: () =>
      Promise.resolve({ status: 'ok' as const, records: [...kept.values()], damaged: [] }),
    write(this: { status: StoreStatus }, sheets: readonly OwnSheet[]) {
      if (this.status === 'ok') for (const sheet of sheets) kept.set(sheet.id, sheet);
      return Promise.resolve(this.status);
    },
  };
}
function page(store = fakeStore(), sheets = fakeSheets()) {
  return { store, sheets, jobs: makeJobs({ store, sheets, now: () => (clock += 1) }) };
}
beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});
const soon = () => vi.advanceTimersByTimeAsync(301);

test('every key is kept a moment later, and sent off whole when the page goes before', async () => {
  const { store, jobs } = page();
  const job = jobs.add('Blue wagon');
  await soon();
  for (const text of ['s', 'sl', 'sli']) jobs.write(jobs.job(job.id) ?? job, 'notes', text);
  expect(store.kept.get(job.id)?.notes.value).toBe('');
  jobs.leave();
  expect(store.left.map(({ notes }) => notes.value)).toEqual(['sli']);
  const before = store.writes;
  await soon();
  expect(store.kept.get(job.id)?.notes.value).toBe('sli');
  expect(store.writes).toBe(before + 1);
});

test('what another tab writes comes in, and what is typed here stays', async () => {
  const { store, jobs } = page();
  const job = jobs.add('Blue wagon');
  await soon();
  const there = store.kept.get(job.id) ?? job;
  store.kept.set(job.id, { ...there, repair: dated(there.repair, clock + 5, 'seal') });
  jobs.write(jobs.job(job.id) ?? job, 'notes', 'typed');
  jobs.watch();
  store.hear();
  await soon();
  expect(jobs.job(job.id)?.repair.value).toBe('seal');
  expect(store.kept.get(job.id)?.notes.value).toBe('typed');
  expect(store.kept.get(job.id)?.repair.value).toBe('seal');
});

test('a refusal is told, the page keeps what it has, and the next change is tried again', async () => {
  const { store, jobs } = page();
  const job = jobs.add('Blue wagon');
  await soon();
  store.status = 'full';
  jobs.write(job, 'notes', 'one');
  await soon();
  expect(jobs.fault.value).toBe('full');
  expect(jobs.job(job.id)?.notes.value).toBe('one');
  store.status = 'ok';
  jobs.write(jobs.job(job.id) ?? job, 'repair', 'two');
  await soon();
  expect(jobs.fault.value).toBeNull();
  expect(store.kept.get(job.id)?.notes.value).toBe('one');
});

describe('the list', () => {
  test('is searched by all words, in labels and notes, without regard to accents', () => {
    const { jobs } = page();
    const job = jobs.add('Café van');
    jobs.add('Blue wagon');
    jobs.write(job, 'notes', 'slips in hills');
    jobs.query.value = 'cafe HILLS';
    expect(jobs.listed.value.map(({ label }) => label.value)).toEqual(['Café van']);
  });
  test('shows what was changed last first, and not what was deleted, until undo', () => {
    const { jobs } = page();
    const first = jobs.add('one');
    jobs.add('two');
    jobs.write(first, 'notes', 'x');
    expect(jobs.listed.value.map(({ label }) => label.value)).toEqual(['one', 'two']);
    jobs.remove(jobs.job(first.id) ?? first);
    expect(jobs.count.value).toBe(1);
    jobs.bringBack(first);
    expect(jobs.count.value).toBe(2);
  });
  test('has the words of the complaint, too', () => {
    const { jobs } = page();
    const job = jobs.add('Bay 3');
    jobs.add('Bay 4');
    jobs.write(job, 'complaint', 'Revs up in Drive');
    jobs.query.value = 'revs drive';
    expect(jobs.listed.value.map(({ label }) => label.value)).toEqual(['Bay 3']);
  });
  test('lets each job that was deleted in this page come back, in any order', () => {
    const { jobs } = page();
    const all = ['one', 'two', 'three'].map((label) => jobs.add(label));
    for (const job of all) jobs.remove(job);
    jobs.add('four');
    const gone = () => jobs.gone.value.map(({ label }) => label.value);
    expect(gone()).toEqual(['three', 'two', 'one']);
    const [first] = all;
    if (first) jobs.bringBack(first);
    expect(gone()).toEqual(['three', 'two']);
    expect(jobs.listed.value.map(({ label }) => label.value).sort()).toEqual(['four', 'one']);
  });
});

test('a file is merged by id and time of change', async () => {
  const { store, jobs } = page();
  const job = jobs.add('Blue wagon');
  await soon();
  const other = {
    ...job,
    label: dated(job.label, clock + 100, 'Blue wagon, hot'),
    notes: { at: 0, value: '' },
  };
  jobs.write(job, 'notes', 'here');
  const taken = await jobs.take(jobFile.write([other, newJob('zz', 5, 'Van')]));
  expect(taken).toMatchObject({ ok: true, added: 1, changed: 1, unreadable: 0 });
  const merged = store.kept.get(job.id);
  expect([merged?.label.value, merged?.notes.value]).toEqual(['Blue wagon, hot', 'here']);
  expect(await jobs.take('Dear sir')).toEqual({ ok: false, fault: 'foreign' });
  expect(jobs.count.value).toBe(2);
});

describe('a job on a sheet of one’s own, taken to another device', () => {
  const van = newSheet('van', 1, 'Van');
  async function file(...sheets: readonly OwnSheet[]) {
    const { jobs } = page(fakeStore(), fakeSheets(...sheets, newSheet('bus', 1, 'Bus')));
    const job = jobs.add('Bay 3');
    jobs.change({ ...job, transmission: dated(job.transmission, clock, 'van') });
    return { id: job.id, ...(await jobs.file()) };
  }

  test('the file carries the sheet that it runs on, and no other', async () => {
    const { text, missing } = await file(van);
    const read = jobFile.read(text);
    expect(read.ok && read.sheets).toEqual([van]);
    expect(missing).toBe(0);
    expect((await file()).missing).toBe(1);
  });

  test('the other device has both', async () => {
    const { text, id } = await file(van);
    const other = page();
    const taken = await other.jobs.take(text);
    expect(taken).toMatchObject({ ok: true, added: 1, sheets: { added: 1, damaged: 0 } });
    expect(other.sheets.kept.get('van')).toEqual(van);
    expect(other.jobs.job(id)?.transmission.value).toBe('van');
  });

  test('where the same sheet is under another id, the job runs on that one', async () => {
    const { text, id } = await file(van);
    const other = page(fakeStore(), fakeSheets(newSheet('here', 7, 'Van')));
    const taken = await other.jobs.take(text);
    expect(taken).toMatchObject({ sheets: { added: 0 } });
    expect([...other.sheets.kept.keys()]).toEqual(['here']);
    expect(other.jobs.job(id)?.transmission.value).toBe('here');
  });

  test('a browser that does not keep the sheet says so, and the job is here', async () => {
    const { text } = await file(van);
    const other = page();
    other.sheets.status = 'full';
    expect(await other.jobs.take(text)).toMatchObject({ added: 1, sheets: { unkept: true } });
  });
});
