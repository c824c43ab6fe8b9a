import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dated } from '../../../src/storage/dated.ts';
import {
  isSheetDeleted,
  mergeSheets,
  newSheet,
  sheetMarkOnly,
  withSheetDeleted,
  type OwnSheet,
} from '../../../src/storage/sheets/own-sheet.ts';
import { sheetFile } from '../../../src/storage/sheets/sheet-file.ts';
import version1 from './sheets-version-1.json' with { type: 'json' };

const time = fc.integer({ min: 0, max: 9 });
const entry = <Value>(value: fc.Arbitrary<Value>) => fc.record({ at: time, value });
const typed = fc.record({
  text: fc.string({ maxLength: 12 }),
  units: fc.constantFrom('us' as const, 'si' as const),
});
const path = fc.constantFrom('ratios.first', 'idle_rpm', 'applyChart.R', 'clutches.high.area_cm2');
const sheet: fc.Arbitrary<OwnSheet> = fc.record({
  id: fc.constantFrom('a', 'b-1'),
  created: time,
  name: entry(fc.string({ maxLength: 60 })),
  fields: fc.dictionary(path, entry(fc.option(typed)), { noNullPrototype: true }),
  deleted: entry(fc.boolean()),
});

test('what is written is read again, to the letter, whatever was typed', () => {
  fc.assert(
    fc.property(fc.array(sheet, { maxLength: 3 }), (records) => {
      expect(sheetFile.read(sheetFile.write(records))).toEqual({
        ok: true,
        records,
        unreadable: 0,
      });
    }),
  );
});

test('a file of version 1 is read for ever', () => {
  const read = sheetFile.read(JSON.stringify(version1));
  expect(read.ok && read.records.map(({ name }) => name.value)).toEqual(['Shop van']);
  expect(read.ok && read.records[0]?.fields['ratios.first']?.value?.text).toBe('3.9');
});

const one = sheetFile.write([newSheet('a', 1, 'x')]);
test.each([
  ['an empty file', '', 'empty'],
  ['a picture', '\u0089PNG\u0000\u0000', 'notText'],
  ['a letter', 'Dear sir,', 'foreign'],
  ['other data', '{"transmissions": []}', 'foreign'],
  ['job sheets of this site', '{"kind":"hot-clutch:jobs","version":1,"jobs":[]}', 'foreign'],
  ['a file that was cut short', one.slice(0, 90), 'broken'],
  ['one of a later version', one.replace('"version": 1', '"version": 2'), 'newer'],
  ['a sheet with a key that none has', one.replace('"id"', '"colour": 1, "id"'), 'broken'],
  ['a path that is none', one.replace('"fields": {}', '"fields": {"../x": null}'), 'broken'],
  ['a time of no calendar', one.replace('"created": 1', '"created": 1e99'), 'broken'],
])('%s is told apart', (_what, text, fault) => {
  expect(sheetFile.read(text)).toEqual({ ok: false, fault });
});

describe('two copies of a sheet', () => {
  test('come to the same in any order, however often they meet', () => {
    const same = sheet.map((given) => ({ ...given, id: 'a' }));
    fc.assert(
      fc.property(same, same, same, (a, b, c) => {
        expect(mergeSheets(a, b)).toEqual(mergeSheets(b, a));
        expect(mergeSheets(mergeSheets(a, b), c)).toEqual(mergeSheets(a, mergeSheets(b, c)));
      }),
    );
  });

  test('a deletion stands until something is changed after it; its mark keeps nothing typed', () => {
    const gone = withSheetDeleted(newSheet('a', 1, 'Van'), 5, true);
    expect(isSheetDeleted(gone)).toBe(true);
    expect(isSheetDeleted({ ...gone, name: dated(gone.name, 9, 'Bus') })).toBe(false);
    expect(sheetMarkOnly(gone)).toMatchObject({
      name: { value: '' },
      fields: {},
      deleted: { value: true },
    });
  });
});
