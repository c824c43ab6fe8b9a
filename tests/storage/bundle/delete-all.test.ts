import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { openDB } from 'idb';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { closeDevice, device, gather } from '../../../src/storage/bundle/device.ts';
import { deleteAll } from '../../../src/storage/bundle/delete-all.ts';
import { allFile, takeIn } from '../../../src/storage/bundle/take-in.ts';
import { tableStore } from '../../../src/storage/sheets/table-store.ts';
import { aBundle } from './a-bundle.ts';
import { fakeArea } from '../fake-area.ts';
import { NOW } from './a-device.ts';

beforeEach(() => {
  vi.stubGlobal('indexedDB', new IDBFactory());
  vi.stubGlobal('localStorage', fakeArea());
  vi.stubGlobal('sessionStorage', fakeArea());
});
afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

const names = async () => (await indexedDB.databases()).map(({ name }) => name);

async function fill() {
  const one = device(() => NOW);
  await takeIn(one, aBundle, allFile);
  const tables = tableStore();
  await tables.write('a', 'table', NOW);
  await tables.close();
  // Something that could not be read, set aside.
  localStorage.setItem('hot-clutch:plan:aside:0', '{"v"');
  localStorage.setItem('another-site', 'stays');
  return one;
}

test('nothing of ours is left, and what is not ours stays', async () => {
  await closeDevice(await fill());
  (await openDB('another-site', 1)).close();
  expect((await names()).length).toBeGreaterThan(4);
  expect(await deleteAll()).toBe('ok');
  expect(await names()).toEqual(['another-site']);
  expect([localStorage.length, localStorage.getItem('another-site')]).toEqual([1, 'stays']);
});

test('another tab that has it open lets go, and finds nothing', async () => {
  const other = await fill();
  await other.log.database();
  expect(await deleteAll()).toBe('ok');
  const { bundle, unreadable } = await gather(other);
  const { answers, jobs, sheets, meetings, plan } = bundle;
  expect([answers, jobs, sheets, meetings, plan, unreadable]).toEqual([[], [], [], [], null, 0]);
  expect(await other.log.append({ at: NOW, answer: aBundle.answers[0]?.answer })).toBe('ok');
});

test('what a frozen tab holds on to is emptied', async () => {
  await closeDevice(await fill());
  const frozen = await openDB('hot-clutch:answers');
  expect(await deleteAll()).toBe('ok');
  expect(await frozen.getAll('answers')).toEqual([]);
  expect(localStorage.length).toBe(1);
  frozen.close();
});

test('a later version’s databases go too', async () => {
  (
    await openDB('hot-clutch:answers', 9, { upgrade: (db) => void db.createObjectStore('x') })
  ).close();
  (await openDB('hot-clutch:rehearsal', 1)).close();
  expect(await deleteAll()).toBe('ok');
  expect(await names()).toEqual([]);
});

test('where the browser does not list databases the known ones go', async () => {
  await closeDevice(await fill());
  const real = indexedDB;
  vi.stubGlobal('indexedDB', {
    open: real.open.bind(real),
    deleteDatabase: real.deleteDatabase.bind(real),
  });
  expect(await deleteAll()).toBe('ok');
  vi.stubGlobal('indexedDB', real);
  expect(await names()).toEqual([]);
});

test('a database that is refused is told of, and the rest goes all the same', async () => {
  await closeDevice(await fill());
  vi.stubGlobal('indexedDB', {
    open: () => {
      throw new DOMException('refused by the test', 'SecurityError');
    },
  });
  expect(await deleteAll()).toBe('blocked');
  expect(localStorage.length).toBe(1);
});
