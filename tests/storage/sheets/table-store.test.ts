import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { tableStore, type TableStore } from '../../../src/storage/sheets/table-store.ts';

let store: TableStore;
beforeEach(() => {
  vi.stubGlobal('indexedDB', new IDBFactory());
  store = tableStore('test-tables');
});
afterEach(async () => {
  await store.close();
  vi.unstubAllGlobals();
});

test('gives a table back by what it was worked out from, and no other', async () => {
  expect(await store.write('one', 'text', 1)).toBe('ok');
  expect(await store.read('one')).toBe('text');
  expect(await store.read('another')).toBeUndefined();
});

test('keeps thirty, the last ones', async () => {
  for (let i = 0; i < 32; i += 1) await store.write(`sheet ${i}`, 'text', i);
  expect(await store.read('sheet 0')).toBeUndefined();
  expect(await store.read('sheet 1')).toBeUndefined();
  expect(await store.read('sheet 2')).toBe('text');
  expect(await store.read('sheet 31')).toBe('text');
});
