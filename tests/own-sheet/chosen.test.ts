import { signal } from '@preact/signals';
import { expect, test } from 'vitest';
import { keptSecondTable } from '../../src/diagnosis/kept-second-table.ts';
import { trainingSheet } from '../../src/engine/index.ts';
import { follow, makeChosen } from '../../src/own-sheet/chosen.ts';
import type { Answer, Ask } from '../../src/own-sheet/messages.ts';
import { makePlanner } from '../../src/planner/model.ts';
import { newSheet, type OwnSheet } from '../../src/storage/sheets/own-sheet.ts';

const training = 'the table of the training transmission';
const withIdle = (id: string, text: string): OwnSheet => ({
  ...newSheet(id, 1, `Sheet ${id}`),
  fields: { idle_rpm: { at: 2, value: { text, units: 'si' } } },
});

/** A page with these sheets, and a worker in the hand of the test. */
function page(sheets: readonly OwnSheet[], which = 'training') {
  const here = { sheets, changed: () => undefined as unknown };
  const kept = new Map<string, string>();
  const asked: Ask[] = [];
  let tell: (answer: Answer) => void = () => undefined;
  let ended = 0;
  const chosen = signal(which);
  const model = makeChosen({
    which: chosen,
    sheets: {
      read: () => Promise.resolve({ status: 'ok', records: here.sheets, damaged: [] }),
      watch: (listener) => {
        here.changed = listener;
        return () => undefined;
      },
    },
    tables: {
      read: (fingerprint) => Promise.resolve(kept.get(fingerprint)),
      write: (fingerprint, text) => {
        kept.set(fingerprint, text);
        return Promise.resolve('ok');
      },
    },
    start: (told) => {
      tell = told;
      return { ask: (ask) => asked.push(ask), stop: () => (ended += 1) };
    },
    code: 'code-1',
    site: { training: () => training, second: () => Promise.resolve('another') },
  });
  return {
    here,
    kept,
    asked,
    chosen,
    model,
    tell: (answer: Answer) => tell(answer),
    ended: () => ended,
  };
}
const settled = () => new Promise((done) => setTimeout(done));

test('a planner on the page is told why it has no table', async () => {
  const { chosen, model } = page([withIdle('one', '820')]);
  const planner = makePlanner(signal([]));
  expect(planner.tableIs.value).toBe('missed');
  const unfollow = follow(planner, model);
  expect([planner.tableIs.value, planner.table.value]).toEqual(['ready', training]);
  chosen.value = 'one';
  await settled();
  expect([planner.tableIs.value, planner.table.value]).toEqual(['noTable', null]);
  model.make();
  expect(planner.tableIs.value).toBe('making');
  chosen.value = 'nowhere';
  await settled();
  expect([planner.tableIs.value, planner.basis.value]).toEqual(['gone', null]);
  unfollow();
});

test('the training transmission is there at once', () => {
  const { model } = page([]);
  expect(model.standing.value).toEqual({ kind: 'ready' });
  expect(model.basis.value?.kind).toBe('training');
});

test('a sheet whose numbers are all assumed is the training transmission, and says whose numbers it is', async () => {
  const { model } = page([newSheet('a', 1, 'Van')], 'a');
  await settled();
  expect(model.standing.value).toEqual({ kind: 'ready' });
  expect(model.basis.value?.own).toMatchObject({ name: 'Van', yours: 0 });
});

test('a table is made when asked for, told of, kept, and not made again', async () => {
  const { model, asked, tell, kept, chosen, ended } = page([withIdle('a', '720')], 'a');
  await settled();
  expect(model.standing.value).toEqual({ kind: 'noTable' });
  expect(model.table.value).toBeNull();
  model.make();
  expect(asked).toMatchObject([
    { kind: 'table', sheet: { idle_rpm: 720, finalDrive: trainingSheet.finalDrive } },
  ]);
  tell({ kind: 'progress', share: 0.4 });
  expect(model.standing.value).toEqual({ kind: 'making', share: 0.4 });
  tell({ kind: 'table', text: keptSecondTable });
  expect(model.standing.value).toEqual({ kind: 'ready' });
  expect(model.table.value).not.toBeNull();
  expect(ended()).toBe(1);
  expect([...kept.keys()][0]).toMatch(/^code-1 /);
  chosen.value = 'training';
  chosen.value = 'a';
  await settled();
  expect(model.standing.value).toEqual({ kind: 'ready' });
  expect(asked).toHaveLength(1);
});

test('cancel ends the work, keeps nothing, and what still comes is not taken', async () => {
  const { model, tell, kept, ended } = page([withIdle('a', '730')], 'a');
  await settled();
  model.make();
  model.cancel();
  expect(ended()).toBe(1);
  tell({ kind: 'table', text: keptSecondTable });
  expect(model.standing.value).toEqual({ kind: 'noTable', last: 'cancelled' });
  expect(kept.size).toBe(0);
});

test.each(['failed', 'stopped'] as const)(
  'work that %s says so, and may be tried again',
  async (why) => {
    const { model, tell, asked } = page([withIdle('a', '740')], 'a');
    await settled();
    model.make();
    tell({ kind: why });
    expect(model.standing.value).toEqual({ kind: 'noTable', last: why });
    model.make();
    expect(asked).toHaveLength(2);
  },
);

test('a sheet that changes while its table is made needs another', async () => {
  const { model, here, ended } = page([withIdle('a', '750')], 'a');
  await settled();
  model.make();
  here.sheets = [withIdle('a', '760')];
  here.changed();
  await settled();
  expect(ended()).toBe(1);
  expect(model.standing.value).toEqual({ kind: 'noTable' });
});

test('another sheet’s change does not end the work', async () => {
  const { model, here, ended } = page([withIdle('a', '770')], 'a');
  await settled();
  model.make();
  here.sheets = [withIdle('a', '770'), newSheet('b', 1, 'Bus')];
  here.changed();
  await settled();
  expect(ended()).toBe(0);
  expect(model.standing.value).toEqual({ kind: 'making', share: 0 });
});

test('a sheet that is not here, and one with something wrong on it, give no answer', async () => {
  const { model, chosen } = page([withIdle('a', '7')], 'b');
  await settled();
  expect(model.standing.value).toEqual({ kind: 'gone' });
  expect(model.basis.value).toBeNull();
  chosen.value = 'a';
  await settled();
  expect(model.standing.value).toEqual({ kind: 'faulty' });
  expect(model.table.value).toBeNull();
});

test('what lies there and is no table is made again', async () => {
  const { model, tell, chosen } = page([withIdle('a', '780')], 'a');
  await settled();
  model.make();
  tell({ kind: 'table', text: 'no table' });
  chosen.value = 'training';
  model.unreadable('no table');
  // Of another transmission by now.
  expect(model.standing.value).toEqual({ kind: 'ready' });
  chosen.value = 'a';
  await settled();
  expect(model.table.value).toBe('no table');
  model.unreadable('no table');
  expect(model.standing.value).toEqual({ kind: 'noTable' });
  expect(model.table.value).toBeNull();
});
