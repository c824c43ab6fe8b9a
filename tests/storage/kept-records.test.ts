import { expect, it } from 'vitest';
import type { StoreStatus } from '../../src/storage/connection.ts';
import { dated } from '../../src/storage/dated.ts';
import { recordFile } from '../../src/storage/kept-file.ts';
import { keptRecords } from '../../src/storage/kept-records.ts';
import type { Kept } from '../../src/storage/record-store.ts';

interface Note extends Kept {
  readonly text: string;
}
const note = (text: string): Note => ({ id: 'one', deleted: dated(undefined, 1, false), text });

/** A store whose writing ends when it is told to. */
function slowStore() {
  const left: string[][] = [];
  const ends: ((status: StoreStatus) => void)[] = [];
  const kept = keptRecords<Note>({
    store: {
      read: () => Promise.resolve({ status: 'ok', records: [], damaged: [] }),
      write: () => new Promise((done) => ends.push(done)),
      leave: (records) => left.push(records.map(({ text }) => text)),
      watch: () => () => undefined,
    },
    file: recordFile<Note>({ kind: 'notes', version: 1, place: 'notes', read: () => undefined }),
    merge: (_, b) => b,
    isDeleted: () => false,
    withDeleted: (one) => one,
    now: () => 2,
  });
  return { kept, left, ends };
}

it('sends off what is still being written when the page goes', async () => {
  const { kept, left, ends } = slowStore();
  kept.change(note('typed'), 'now');
  kept.leave();
  expect(left).toEqual([['typed']]);
  ends[0]?.('ok');
  await Promise.resolve();
  await Promise.resolve();
  kept.leave();
  expect(left.at(-1), 'what is written needs no sending').toEqual([]);
});

it('sends off the last state of what changed while it was written, once', () => {
  const { kept, left } = slowStore();
  kept.change(note('typed'), 'now');
  kept.change(note('typed more'));
  kept.leave();
  expect(left).toEqual([['typed more']]);
});
