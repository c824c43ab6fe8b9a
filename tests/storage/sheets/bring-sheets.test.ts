import { expect, test } from 'vitest';
import { bringSheets } from '../../../src/storage/sheets/bring-sheets.ts';
import {
  isSheetDeleted,
  newSheet,
  withSheetDeleted,
  type OwnSheet,
} from '../../../src/storage/sheets/own-sheet.ts';

const typed = (id: string, name: string, first: string, at = 2): OwnSheet => ({
  ...newSheet(id, 1, name),
  fields: { 'ratios.first': { at, value: { text: first, units: 'si' } } },
});

test('a sheet that is not here is brought', () => {
  const brought = bringSheets([], [typed('a', 'Van', '3.9')], 9);
  expect(brought).toMatchObject({ added: 1, sameName: [] });
  expect(brought.sheets.map(({ id }) => id)).toEqual(['a']);
});

test('the same sheet again is not doubled, under its own id or another', () => {
  const here = [typed('a', 'Van', '3.9')];
  expect(bringSheets(here, here, 9)).toMatchObject({ sheets: [], added: 0 });
  // Typed in again on another device, at another time.
  const again = bringSheets(here, [typed('b', 'Van', '3.9', 7)], 9);
  expect(again).toMatchObject({ sheets: [], added: 0, sameName: [] });
  expect([...again.instead]).toEqual([['b', 'a']]);
});

test('a different one of the same name is kept beside it, and that is said', () => {
  const brought = bringSheets([typed('a', 'Van', '3.9')], [typed('b', 'Van', '4.1')], 9);
  expect(brought).toMatchObject({ added: 1, sameName: ['Van'] });
  expect(brought.sheets.map(({ id }) => id)).toEqual(['b']);
  expect(brought.instead.size).toBe(0);
});

test('of one sheet changed on both sides the later change stands, field by field', () => {
  const here = typed('a', 'Van', '3.9', 5);
  const given: OwnSheet = {
    ...typed('a', 'Van', '3.7', 4),
    fields: {
      'ratios.first': { at: 4, value: { text: '3.7', units: 'si' } },
      idle_rpm: { at: 6, value: { text: '650', units: 'si' } },
    },
  };
  const [merged] = bringSheets([here], [given], 9).sheets;
  expect(merged?.fields['ratios.first']?.value?.text).toBe('3.9');
  expect(merged?.fields['idle_rpm']?.value?.text).toBe('650');
});

test('one that was deleted here comes back, because a job runs on it', () => {
  const sheet = typed('a', 'Van', '3.9');
  const brought = bringSheets([withSheetDeleted(sheet, 5, true)], [sheet], 9);
  expect(brought.added).toBe(1);
  expect(brought.sheets.map(isSheetDeleted)).toEqual([false]);
});
