import { expect, test } from 'vitest';
import { newJob, withDeleted } from '../../../src/storage/jobs/job.ts';
import { newSheet } from '../../../src/storage/sheets/own-sheet.ts';
import { jobFile } from '../../../src/storage/jobs/job-file.ts';
import version1 from './jobs-version-1.json' with { type: 'json' };
import version2 from './jobs-version-2.json' with { type: 'json' };

test('what is written is read again, marks of deletions as well', () => {
  const jobs = [newJob('a', 1, 'Blue wagon'), withDeleted(newJob('b', 2, 'Van'), 3, true)];
  const whole = { ok: true, records: jobs, unreadable: 0 };
  expect(jobFile.read(jobFile.write(jobs))).toEqual({ ...whole, sheets: [], damagedSheets: 0 });
  const sheets = [newSheet('s', 3, 'Van')];
  expect(jobFile.read(jobFile.write(jobs, sheets))).toEqual({ ...whole, sheets, damagedSheets: 0 });
});

test('a damaged sheet in it hides no job and no other sheet', () => {
  const text = jobFile.write(
    [newJob('a', 1, 'x')],
    [newSheet('s', 3, 'Van'), newSheet('t', 3, 'Bus')],
  );
  const cut = jobFile.read(text.replace('"id": "t"', '"id": 7'));
  expect(cut).toMatchObject({ ok: true, unreadable: 0, damagedSheets: 1 });
  expect(cut.ok && [cut.records.length, cut.sheets.length]).toEqual([1, 1]);
  const none = jobFile.read(text.replace('"transmissions": [', '"transmissions": 7, "rest": ['));
  expect(none).toMatchObject({ ok: true, sheets: [], damagedSheets: 1 });
});

test('a file of version 1 is read for ever', () => {
  const read = jobFile.read(JSON.stringify(version1));
  expect(read.ok && read.records.map(({ label }) => label.value)).toEqual(['Bay 3, slips hot']);
  expect(read.ok && Object.keys(read.records[0]?.readings ?? {})).toHaveLength(2);
  // There was no choice of a transmission then.
  expect(read.ok && read.records[0]?.transmission.value).toBe('training');
  // Nor a place for the complaint.
  expect(read.ok && read.records[0]?.complaint).toEqual({ at: 0, value: '' });
});

test('a file of version 2 has the complaint, and is read for ever', () => {
  const read = jobFile.read(JSON.stringify(version2));
  const [job] = read.ok ? read.records : [];
  expect(job?.complaint.value).toBe('Fine cold. After twenty minutes it revs up in Drive.');
  expect(jobFile.read(jobFile.write(job ? [job] : []))).toMatchObject({ records: [job] });
});

test.each([
  ['an empty file', '', 'empty'],
  ['a picture', '\u0089PNG\u0000\u0000', 'notText'],
  ['a letter', 'Dear sir,', 'foreign'],
  ['other data', '{"jobs": []}', 'foreign'],
  ['a table', 'a;b\n1;2', 'foreign'],
  ['a file that was cut short', jobFile.write([newJob('a', 1, 'x')]).slice(0, 80), 'broken'],
  ['one of a later version', '{"kind":"hot-clutch:jobs","version":3,"jobs":[]}', 'newer'],
  ['one of no version', '{"kind":"hot-clutch:jobs","version":0,"jobs":[]}', 'broken'],
  ['one with nothing readable', '{"kind":"hot-clutch:jobs","version":1,"jobs":[{}]}', 'broken'],
])('%s is told apart', (_what, text, fault) => {
  expect(jobFile.read(text)).toEqual({ ok: false, fault });
});

test('a damaged job in a file hides no other', () => {
  const text = jobFile.write([newJob('a', 1, 'x')]).replace('"jobs": [', '"jobs": [{"id": 7},');
  const read = jobFile.read(text);
  expect(read).toMatchObject({ ok: true, unreadable: 1 });
  expect(read.ok && read.records).toHaveLength(1);
});
