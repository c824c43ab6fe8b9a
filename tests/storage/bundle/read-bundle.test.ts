import { describe, expect, test } from 'vitest';
import { LONGEST_FILE, writeBundle, type Bundle } from '../../../src/storage/bundle/bundle.ts';
import { readBundle, tooLarge } from '../../../src/storage/bundle/read-bundle.ts';
import { aBundle, emptyBundle } from './a-bundle.ts';
import version1 from './bundle-version-1.json' with { type: 'json' };

const good = writeBundle(aBundle);
const plain = () => JSON.parse(good) as Record<string, unknown>;
const sentence = (text: string): string => {
  const read = readBundle(text);
  if (read.ok) throw new Error('The file was taken.');
  return read.sentence;
};
const changed = (change: Record<string, unknown>): string =>
  sentence(JSON.stringify({ ...plain(), ...change }));

describe('a file of everything', () => {
  test.each<[string, Bundle]>([
    ['something in each part', aBundle],
    ['nothing at all', emptyBundle],
    ['no name', { ...aBundle, name: null }],
  ])('comes back as it was: %s', (_, bundle) => {
    expect(readBundle(writeBundle(bundle))).toEqual({ ok: true, bundle });
    expect(readBundle(`\ufeff${writeBundle(bundle)}`)).toEqual({ ok: true, bundle });
  });

  test('carries a name only where one was typed', () => {
    expect(
      Object.keys(JSON.parse(writeBundle({ ...aBundle, name: null })) as object),
    ).not.toContain('name');
  });

  // As version 1 wrote it, with a list of lessons of the version before. Kept for ever.
  test('of version 1 is read', () => {
    const read = readBundle(JSON.stringify(version1));
    expect(read.ok && read.bundle.answers).toHaveLength(2);
    expect(read.ok && read.bundle.plan?.exam).toBe('2027-03-01');
    expect(read.ok && read.bundle.progress).toEqual({
      done: ['what-pressure-does'],
      last: { lesson: 'what-pressure-does', section: null },
    });
    // It knew none, and one that has some says so by its version.
    expect(read.ok && read.bundle.meetings).toEqual([]);
    expect(sentence(JSON.stringify({ ...version1, meetings: [] }))).toMatch(/an entry “meetings”/);
  });
});

describe('is refused in words:', () => {
  test.each([
    ['an empty file', '', /is empty/],
    ['spaces', ' \n ', /is empty/],
    ['bytes', '\u0000\u0001PK', /not text/],
    ['a picture read as text', '\ufffd\ufffdJFIF', /not text/],
    ['prose', 'Dear foreman', /somewhere else/],
    ['a page', '<!doctype html><title>Log in</title>', /somewhere else/],
    ['a list', '[1,2]', /somewhere else/],
    [
      'the file of another site',
      '{"kind":"flash-cards","version":1,"answers":[]}',
      /somewhere else/,
    ],
    ['no object', 'null', /somewhere else/],
    ['meetings alone', '{"kind":"hot-clutch:meetings","version":1}', /only meetings/],
    ['job sheets alone', '{"kind":"hot-clutch:jobs","version":1,"jobs":[]}', /only job sheets/],
    ['transmissions alone', '{"kind":"hot-clutch:transmissions"}', /only transmissions/],
    [
      'nesting without end',
      `{"kind":"hot-clutch:kept","version":1,"parts":${'['.repeat(1e6)}`,
      /cut short/,
    ],
    [
      'deep nesting',
      `{"kind":"hot-clutch:kept","version":1,"parts":${'['.repeat(99)}${']'.repeat(99)}}`,
      /cut short/,
    ],
  ])('%s', (_, text, said) => {
    expect(sentence(text)).toMatch(said);
  });

  test('a file cut short, wherever', () => {
    const end = good.trimEnd().length;
    for (let length = 30; length < end; length += 7) {
      expect(sentence(good.slice(0, length))).toMatch(/cut short/);
    }
    expect(sentence(good.slice(0, 12))).toMatch(/somewhere else/);
  });

  test('a file of 50 MB, at once and before it is read', () => {
    expect(tooLarge(50_000_000)).toMatch(/larger than 25 MB/);
    const huge = `{"kind":"hot-clutch:kept",${' '.repeat(50_000_000)}}`;
    const began = performance.now();
    expect(sentence(huge)).toMatch(/larger than 25 MB/);
    expect(performance.now() - began).toBeLessThan(50);
    expect(tooLarge(LONGEST_FILE)).toBeUndefined();
  });

  test('what a later version wrote, whole or in a part', () => {
    expect(changed({ version: 4, more: 1 })).toMatch(/later version/);
    expect(changed({ answers: [{ v: 99, at: 1, answer: {} }] })).toMatch(/later version/);
    expect(changed({ parts: { plan: { v: 99, data: {} } } })).toMatch(/later version/);
  });

  test.each([
    ['no version', { version: undefined }, /cut short/],
    ['a version of no kind', { version: '1' }, /cut short/],
    ['an entry too many', { score: 100 }, /an entry “score”/],
    ['a part too many', { parts: { score: { v: 1, data: 1 } } }, /an entry “score”/],
    ['no answers', { answers: undefined }, /its list of answers/],
    ['answers by name', { answers: { 0: 1 } }, /its list of answers/],
    ['no parts', { parts: [] }, /its part with plan/],
    ['no jobs', { jobs: 7 }, /its list of job sheets/],
    ['a job of the wrong form', { jobs: [{ id: 'a' }] }, /its job sheet 1 of 1/],
    ['a sheet of the wrong form', { sheets: [null] }, /its transmission 1 of 1/],
    ['no meetings', { meetings: undefined }, /its list of meetings/],
    ['a meeting of the wrong form', { meetings: [{}, 1] }, /its meeting 1 of 2/],
    ['a date that is none', { written: 'today' }, /its date/],
    ['a date after all dates', { written: 1e300 }, /its date/],
    [
      'an exam on no day',
      { parts: { plan: { v: 1, data: { exam: 'soon', minutes: 5, round: null } } } },
      /its plan/,
    ],
    ['a part without a version', { parts: { settings: { data: {} } } }, /its choice of units/],
    ['a part of a version that never was', { parts: { plan: { v: 0, data: {} } } }, /its plan/],
    [
      'lessons that are none',
      { parts: { progress: { v: 2, data: { done: [1], last: null } } } },
      /its list of lessons/,
    ],
    ['no name in the name', { name: '  ' }, /its name/],
    ['a name of the wrong type', { name: ['a'] }, /its name/],
    ['a name without end', { name: 'a'.repeat(61) }, /its name/],
    ['a name with a line break', { name: 'a\nb' }, /its name/],
  ])('%s', (_, change, said) => {
    expect(changed(change)).toMatch(said);
  });

  test.each([
    ['no time', { at: undefined }],
    ['a time of the wrong type', { at: '1764000000000' }],
    ['a time before all times', { at: -1 }],
    ['a time after all times', { at: 1e300 }],
    ['no version', { v: undefined }],
    ['no answer', { answer: undefined }],
    ['something more', { points: 3 }],
    ['something more in the answer', { answer: { ...aBundle.answers[0]?.answer, points: 3 } }],
    ['a certainty that is none', { answer: { ...aBundle.answers[0]?.answer, certainty: 4 } }],
    ['no object', null],
  ])('an answer with %s, and which one it was', (_, change) => {
    const answers = plain()['answers'] as object[];
    answers[1] = change === null ? (7 as never) : { ...answers[1], ...change };
    expect(changed({ answers })).toMatch(/its answer 2 of 3 cannot be read/);
  });

  test.each(['__proto__', 'constructor', 'prototype'])('the key %s, at any depth', (key) => {
    const put = (text: string, before: string): string =>
      text.replace(before, `"${key}":{"polluted":true},${before}`);
    for (const before of ['"written"', '"plan"', '"exam"', '"case-1"', '"given"', '"label"']) {
      const text = put(good, before);
      expect(text).not.toBe(good);
      expect(sentence(text)).toContain(key);
    }
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
  });
});
