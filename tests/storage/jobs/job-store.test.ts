import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { openDB } from 'idb';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { dated, newJob, withDeleted, type Job } from '../../../src/storage/jobs/job.ts';
import { jobStore, type JobStore } from '../../../src/storage/jobs/job-store.ts';
import { fakeArea, type FakeArea } from '../fake-area.ts';

let open: JobStore[] = [];
let area: FakeArea;
const tab = (): JobStore => {
  const store = jobStore('test-jobs');
  open.push(store);
  return store;
};
const stub = (name: 'get' | 'put', fail: () => never) =>
  vi.spyOn(IDBObjectStore.prototype, name).mockImplementation(fail);

beforeEach(() => {
  area = fakeArea();
  vi.stubGlobal('localStorage', area);
  vi.stubGlobal('indexedDB', new IDBFactory());
});
afterEach(async () => {
  await Promise.all(open.map((store) => store.close()));
  open = [];
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});
const NOW = 1000;
const one = newJob('a', NOW, 'Blue wagon');
const note = (job: Job, at: number, value: string): Job => ({
  ...job,
  notes: dated(job.notes, at, value),
});

test('keeps jobs, and what two tabs write of one job at once', async () => {
  const [first, second] = [tab(), tab()];
  expect(await first.write([one])).toBe('ok');
  const named = { ...one, label: dated(one.label, NOW + 5, 'Blue wagon, hot') };
  await Promise.all([first.write([named]), second.write([note(one, NOW + 6, 'slips')])]);
  const { status, records: jobs } = await tab().read(NOW);
  expect(status).toBe('ok');
  expect(jobs.map(({ label, notes }) => [label.value, notes.value])).toEqual([
    ['Blue wagon, hot', 'slips'],
  ]);
});

const rooms = {
  'in browser storage': null,
  'in the database, where browser storage is full': {
    on: /left/,
    as: 'QuotaExceededError',
  },
} as const;
test.each(Object.entries(rooms))(
  'what is left in the moment of going is there at the next look: %s',
  async (_, failWrites) => {
    area.failWrites = failWrites;
    const going = tab();
    await going.write([one]);
    going.leave([note(one, NOW + 7, 'the last word')]);
    expect(area.kept.size).toBe(failWrites === null ? 1 : 0);
    // What is written meanwhile by another tab stays.
    await tab().write([{ ...one, repair: dated(one.repair, NOW + 8, 'seal') }]);
    const [job] = (await tab().read(NOW)).records;
    expect([job?.notes.value, job?.repair.value]).toEqual(['the last word', 'seal']);
    expect(area.kept.size, 'it is in the store now').toBe(0);
    const again = (await tab().read(NOW)).records;
    expect(again.map(({ notes }) => notes.value)).toEqual(['the last word']);
  },
);

test('what two tabs leave in one moment is brought together', async () => {
  const [first, second] = [tab(), tab()];
  await first.write([one]);
  first.leave([note(one, NOW + 7, 'slips')]);
  second.leave([{ ...one, repair: dated(one.repair, NOW + 8, 'seal') }]);
  const [job] = (await tab().read(NOW)).records;
  expect([job?.notes.value, job?.repair.value]).toEqual(['slips', 'seal']);
});

test('what was left and cannot be read stays where it lies, and is told of', async () => {
  area.kept.set('test-jobs:left:1', '[{"id":');
  area.kept.set('test-jobs:left:2', JSON.stringify([{ of: 'a later version' }, one]));
  for (const look of [1, 2]) {
    const { records, damaged } = await tab().read(NOW);
    expect(records.map(({ id }) => id)).toEqual(['a']);
    expect(damaged, `look ${look}`).toEqual(['[{"id":', { of: 'a later version' }]);
  }
  expect([...area.kept.keys()]).toEqual(['test-jobs:left:1', 'test-jobs:left:2']);
});

test('a deleted job can come back for an hour; after that only the mark lies there', async () => {
  const store = tab();
  await store.write([withDeleted(one, NOW + 10, true)]);
  expect((await store.read(NOW + 20)).records[0]?.label.value).toBe('Blue wagon');
  const later = NOW + 10 + 3_600_001;
  expect((await store.read(later)).records[0]?.label.value).toBe('');
  expect((await store.read(later)).records[0]?.deleted.value).toBe(true);
});

test('what cannot be read is left where it lies, told of, and never written over', async () => {
  const store = tab();
  await store.write([one]);
  const database = await openDB('test-jobs', 1);
  await database.put('jobs', { id: 'b', of: 'a later version' });
  expect(await store.write([newJob('b', NOW, 'Van')])).toBe('ok');
  const { records: jobs, damaged } = await store.read(NOW);
  expect(jobs.map(({ id }) => id).sort()).toEqual(['a', 'b']);
  expect(damaged).toEqual([{ id: 'b', of: 'a later version' }]);
  database.close();
});

test('says that there is no room, or that the browser keeps nothing', async () => {
  const store = tab();
  await store.write([one]);
  stub('put', () => {
    throw new DOMException('no room', 'QuotaExceededError');
  });
  expect(await store.write([one])).toBe('full');
  vi.restoreAllMocks();
  expect(await store.write([one])).toBe('ok');
  vi.stubGlobal('indexedDB', {
    open: () => {
      throw new DOMException('no', 'SecurityError');
    },
  });
  expect(await tab().write([one])).toBe('blocked');
  expect(await tab().read(NOW)).toEqual({ status: 'blocked', records: [], damaged: [] });
});

test('another tab hears of a change', async () => {
  const [first, second] = [tab(), tab()];
  const heard = new Promise<void>((done) => second.watch(done));
  await first.write([one]);
  await heard;
});
