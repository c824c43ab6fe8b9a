/** Files that somebody brings: everything kept, a learner's for the class, jobs, transmissions, questions; and what lies on the device. */
import { readFileSync } from 'node:fs';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { ALL_FIELDS } from '../../src/own-sheet/fields.ts';
import { lacking } from '../../src/meeting/own.ts';
import { readSheet } from '../../src/own-sheet/read-sheet.ts';
import { readQti } from '../../src/qti/read.ts';
import { Refusal } from '../../src/qti/refusal.ts';
import { writeQti } from '../../src/qti/write.ts';
import { readQuestionSet, writeQuestionSet } from '../../src/quiz/question-set.ts';
import { takeFile, type Member } from '../../src/rounds/class/take-file.ts';
import { forms, nothingKept, partNames, writeBundle } from '../../src/storage/bundle/bundle.ts';
import { compare } from '../../src/storage/bundle/compare.ts';
import { readBundle } from '../../src/storage/bundle/read-bundle.ts';
import { jobFile } from '../../src/storage/jobs/job-file.ts';
import { changedAt, merge } from '../../src/storage/jobs/job.ts';
import { keeper } from '../../src/storage/envelope.ts';
import { newSheet, type OwnSheet } from '../../src/storage/sheets/own-sheet.ts';
import { meetingFile } from '../../src/storage/meetings/meeting-store.ts';
import { isMeetingDeleted, mergeMeetings } from '../../src/storage/meetings/own-meeting.ts';
import { sheetFile } from '../../src/storage/sheets/sheet-file.ts';
import type { Form } from '../../src/storage/versioned.ts';
import { ask, asked, shortCase } from '../quiz/sample.ts';
import { aBundle } from '../storage/bundle/a-bundle.ts';
import { fakeArea } from '../storage/fake-area.ts';
import { damaged } from './damage.ts';
import { expectPlain, expectSentence, fuzz, growth, leaveFigures } from './kit.ts';

leaveFigures('files');

const NOW = 1_795_900_000_000;
const whole = writeBundle(aBundle);
fuzz('Files of everything that a device keeps', 20_000, damaged(whole), (text) => {
  const read = readBundle(text);
  if (!read.ok) {
    expectSentence(read.sentence);
    return;
  }
  expectPlain(read.bundle);
  expectPlain(compare(nothingKept(NOW), read.bundle, NOW));
});

const there: Member[] = [];
fuzz('Files of learners, taken into a class', 6000, damaged(whole), (text) => {
  const taken = takeFile(text, there, there.length + 1);
  if (taken.kind === 'refused') expectSentence(taken.sentence);
  expectPlain(taken);
  if (taken.kind === 'new' && there.length < 20) there.push(taken.member);
});

const FAULTS = ['notText', 'foreign', 'newer', 'broken', 'empty'];
const jobs = readFileSync('tests/storage/jobs/jobs-version-1.json', 'utf8');
fuzz('Files of job sheets', 18_000, damaged(jobs), (text) => {
  const read = jobFile.read(text);
  if (!read.ok) {
    expect(FAULTS).toContain(read.fault);
    return;
  }
  expectPlain(read);
  for (const job of read.records) {
    expect(Number.isFinite(changedAt(job))).toBe(true);
    expectPlain(merge(job, job));
  }
});

const sheets = readFileSync('tests/storage/sheets/sheets-version-1.json', 'utf8');
fuzz('Files of transmissions', 12_000, damaged(sheets), (text) => {
  const read = sheetFile.read(text);
  if (!read.ok) {
    expect(FAULTS).toContain(read.fault);
    return;
  }
  expectPlain(read);
  for (const sheet of read.records) expectPlain(readSheet(sheet).whole);
});

const meetings = readFileSync('tests/storage/meetings/meetings-version-1.json', 'utf8');
fuzz('Files of meetings of one’s own', 12_000, damaged(meetings), (text) => {
  const read = meetingFile.read(text);
  if (!read.ok) {
    expect(FAULTS).toContain(read.fault);
    return;
  }
  expectPlain(read);
  for (const meeting of read.records) {
    expectPlain(mergeMeetings(meeting, meeting));
    // What lacks something is told, and what does not is shown.
    if (isMeetingDeleted(meeting)) continue;
    for (const { what } of lacking(meeting.plan.value)) expect(what).not.toBe('');
  }
});

const paths = [...ALL_FIELDS.map(({ path }) => path), 'applyChart.3', 'seal.circuits', 'fluid'];
const typed = fc.oneof(
  fc.double().map(String),
  fc.integer({ min: -5, max: 5000 }).map(String),
  fc.string({ unit: 'binary', maxLength: 20 }),
  fc.constantFrom(
    '1,5',
    '1/2',
    '5 psi',
    '100 kPa',
    '1e999',
    '-',
    'own',
    'forward high',
    '__proto__',
  ),
);
const anySheet: fc.Arbitrary<OwnSheet> = fc
  .dictionary(
    fc.oneof(
      { arbitrary: fc.constantFrom(...paths), weight: 9 },
      { arbitrary: fc.constantFrom('constructor', '__proto__', 'a.__proto__.b'), weight: 1 },
    ),
    fc.record({
      at: fc.constant(1),
      value: fc.record({ text: typed, units: fc.constantFrom('us', 'si') }),
    }),
    { maxKeys: 8 },
  )
  .map((fields) => ({ ...newSheet('a', 1, 'Mine'), fields }));
fuzz('Numbers typed on a transmission sheet', 8000, anySheet, (sheet) => {
  const { whole: read, troubles } = readSheet(sheet);
  expect(read === null).toBe(troubles.size > 0);
  for (const trouble of troubles.values())
    if (trouble.kind === 'check') expectSentence(trouble.message);
});

const questions = [...asked, ask(shortCase)];
const set = writeQuestionSet({ form: 1, lesson: 'lesson-a', questions, objectives: [] });
fuzz('Questions as they come over the line', 10_000, damaged(set), (text) => {
  try {
    expectPlain(readQuestionSet(text, 'lesson-a'));
  } catch (error) {
    if (!(error instanceof Error) || error.constructor !== Error) throw error;
    expect(error.message).toMatch(/^(What arrived for|The questions of)/);
  }
});

const zip = writeQti({
  system: 'us',
  version: '1.2.3',
  lessons: [
    {
      id: 'lesson-a',
      title: 'Lesson A',
      objectives: [{ id: 'a-1', text: 'Say what a gauge shows.' }],
      questions,
    },
  ],
});
const inside = Object.entries(unzipSync(zip)).map(
  ([path, bytes]) => [path, strFromU8(bytes)] as const,
);
const oneFileChanged = fc
  .tuple(
    fc.constantFrom(...inside),
    fc.nat(9999),
    fc.nat(80),
    fc.oneof(
      fc.string({ unit: 'binary', maxLength: 12 }),
      fc.constantFrom(
        '<!DOCTYPE a [<!ENTITY b "c">]>',
        '&b;',
        '__proto__',
        '<',
        '">',
        '"0"',
        '../../x',
      ),
    ),
    fc.boolean(),
  )
  .map(([[path, text], at, length, put, renamed]) => {
    const from = at % text.length;
    const changed = text.slice(0, from) + put + text.slice(from + length);
    const files = inside.map(([one, before]) =>
      one === path ? ([renamed ? `${put}x` : one, changed] as const) : ([one, before] as const),
    );
    return zipSync(Object.fromEntries(files.map(([name, body]) => [name, strToU8(body)])), {
      level: 0,
    });
  });
const oneByteChanged = fc
  .tuple(fc.nat(zip.length - 1), fc.integer({ min: 1, max: 255 }))
  .map(([at, by]) => {
    const bytes = zip.slice();
    bytes[at] = (bytes[at] ?? 0) ^ by;
    return bytes;
  });
fuzz(
  'Packages of questions (QTI)',
  2000,
  fc.oneof(oneFileChanged, oneByteChanged, fc.uint8Array({ maxLength: 200 })),
  (bytes) => {
    try {
      expectPlain(readQti(bytes));
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      expectSentence(error.message);
    }
  },
);

test('undamaged, each of them is read', () => {
  expect(readBundle(whole).ok).toBe(true);
  expect(takeFile(whole, [], 1).kind).toBe('new');
  expect(jobFile.read(jobs)).toMatchObject({ ok: true, unreadable: 0 });
  expect(sheetFile.read(sheets)).toMatchObject({ ok: true, unreadable: 0 });
  expect(meetingFile.read(meetings)).toMatchObject({ ok: true, unreadable: 0 });
  expect(readQuestionSet(set, 'lesson-a').questions).toHaveLength(questions.length);
  expect(readQti(zip).lessons[0]?.questions).toHaveLength(questions.length);
});

const parts = partNames.map((part) => ({
  form: forms[part] as Form<unknown>,
  good: JSON.stringify({ v: forms[part].version, n: 3, data: aBundle[part] }),
}));
const slotOf = (good: string): fc.Arbitrary<string> =>
  fc.oneof(
    { arbitrary: fc.constant(good), weight: 1 },
    { arbitrary: damaged(good), weight: 6 },
    { arbitrary: fc.string({ unit: 'binary', maxLength: 40 }), weight: 1 },
  );
const inSlots = fc.constantFrom(...parts).chain(({ form, good }) =>
  fc.record({
    form: fc.constant(form),
    a: slotOf(good),
    b: slotOf(good),
    pointer: fc.constantFrom('a', 'b', '', 'c'),
  }),
);
fuzz(
  'What lies in the browser’s own storage, damaged',
  10_000,
  inSlots,
  ({ form, a, b, pointer }) => {
    const area = fakeArea();
    area.kept.set(`hot-clutch:${form.name}:a`, a);
    area.kept.set(`hot-clutch:${form.name}:b`, b);
    area.kept.set(`hot-clutch:${form.name}:slot`, pointer);
    const { data, status } = keeper<unknown>({ ...form, area, empty: null }).read();
    expect(['ok', 'recovered', 'unreadable', 'newer']).toContain(status);
    expectPlain(data);
    // Whatever cannot be read is still somewhere on the device.
    const there = [...area.kept.values()];
    for (const text of [a, b]) expect(there).toContain(text);
  },
);

const job = (JSON.parse(jobs) as { jobs: object[] }).jobs[0];
growth('The longest file', 60, {
  jobs: (n) => {
    const text = JSON.stringify({
      kind: 'hot-clutch:jobs',
      version: 1,
      jobs: Array.from({ length: n * 10 }, () => job),
    });
    return () => void jobFile.read(text);
  },
  answers: (n) => {
    const answers = Array.from({ length: n * 10 }, () => aBundle.answers).flat();
    const text = writeBundle({ ...aBundle, answers });
    return () => void readBundle(text);
  },
  brackets: (n) => () => void readBundle(`${'['.repeat(n * 500)}${']'.repeat(n * 500)}`),
  keys: (n) => {
    const keys = Object.fromEntries(Array.from({ length: n * 100 }, (_, i) => [`k${i}`, i]));
    const text = JSON.stringify({ ...(JSON.parse(whole) as object), ...keys });
    return () => void readBundle(text);
  },
  questions: (n) => {
    const many = Array.from({ length: n }, () => questions).flat();
    const text = writeQuestionSet({ form: 1, lesson: 'lesson-a', questions: many, objectives: [] });
    return () => void readQuestionSet(text, 'lesson-a');
  },
  'numbers on a sheet': (n) => {
    const fields = Object.fromEntries(
      paths.map((path) => [path, { at: 1, value: { text: '1'.repeat(n * 100), units: 'us' } }]),
    );
    const sheet = { ...newSheet('a', 1, 'Mine'), fields } as OwnSheet;
    return () => void readSheet(sheet);
  },
});
