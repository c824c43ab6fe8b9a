import { expect, test } from 'vitest';
import { makeSheets } from '../../../src/measure/transmission/model.ts';
import { mergeSheets, type OwnSheet } from '../../../src/storage/sheets/own-sheet.ts';

function page(there = new Map<string, OwnSheet>()) {
  let clock = 100;
  const sheets = makeSheets({
    store: {
      read: () => Promise.resolve({ status: 'ok', records: [...there.values()], damaged: [] }),
      write: (records) => {
        for (const one of records) {
          const before = there.get(one.id);
          there.set(one.id, before ? mergeSheets(before, one) : one);
        }
        return Promise.resolve('ok');
      },
      leave: () => undefined,
      watch: () => () => undefined,
    },
    now: () => (clock += 1),
  });
  return { sheets, there };
}
const typed = (text: string) => ({ text, units: 'us' as const });

test('what is typed, emptied and renamed is there after the next load', async () => {
  const { sheets, there } = page();
  const { id } = sheets.add('Van');
  const now = () => sheets.sheet(id) ?? sheets.add('lost');
  sheets.type(now(), 'ratios.first', typed('3.9'));
  sheets.type(now(), 'ratios.third', typed('x'));
  sheets.type(now(), 'ratios.third', null);
  sheets.rename(now(), 'Shop van');
  await sheets.keep();
  const { sheets: next } = page(there);
  await next.load();
  const [sheet] = next.listed.value;
  expect(sheet?.name.value).toBe('Shop van');
  expect(sheet?.fields['ratios.first']?.value).toEqual(typed('3.9'));
  expect(sheet?.fields['ratios.third']?.value).toBeNull();
});

test('a deleted sheet comes back with all that was typed', () => {
  const { sheets } = page();
  const sheet = sheets.add('Van');
  sheets.type(sheet, 'idle_rpm', typed('720'));
  sheets.remove(sheets.sheet(sheet.id) ?? sheet);
  expect(sheets.listed.value).toEqual([]);
  expect(sheets.gone.value.map(({ name }) => name.value)).toEqual(['Van']);
  sheets.bringBack(sheet);
  expect(sheets.listed.value[0]?.fields['idle_rpm']?.value).toEqual(typed('720'));
});

test('a file comes in whole on another device, and is refused where it is none', async () => {
  const { sheets } = page();
  sheets.type(sheets.add('Van'), 'idle_rpm', typed('720'));
  const { sheets: other } = page();
  expect(await other.take(sheets.file())).toEqual({
    ok: true,
    added: 1,
    changed: 0,
    unreadable: 0,
  });
  expect(other.listed.value).toEqual(sheets.listed.value);
  expect(await other.take('{"kind":"else"}')).toEqual({ ok: false, fault: 'foreign' });
  expect(other.listed.value).toHaveLength(1);
});
