import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  changedAt,
  dated,
  enteredAt,
  isDeleted,
  markOnly,
  merge,
  newJob,
  readingsOf,
  timedId,
  withDeleted,
  type Job,
  type JobReading,
} from '../../../src/storage/jobs/job.ts';

const time = fc.integer({ min: 0, max: 9 });
const entry = <Value>(value: fc.Arbitrary<Value>) => fc.record({ at: time, value });
const reading: fc.Arbitrary<JobReading> = fc.record({
  test: fc.constantFrom('codes', 'line.park.700.hot'),
  phase: fc.constantFrom('before' as const, 'after' as const),
  value: fc.oneof(fc.integer({ min: 0, max: 900 }), fc.constant(null)),
  typed: fc.string({ maxLength: 4 }),
  units: fc.constantFrom('us' as const, 'si' as const),
});
const job: fc.Arbitrary<Job> = fc.record({
  id: fc.constant('a'),
  created: time,
  label: entry(fc.string({ maxLength: 3 })),
  complaint: entry(fc.string({ maxLength: 3 })),
  notes: entry(fc.string({ maxLength: 3 })),
  repair: entry(fc.string({ maxLength: 3 })),
  draft: entry(fc.constant(null)),
  transmission: entry(fc.constantFrom('training', 'second', 'mine-1')),
  readings: fc.dictionary(fc.constantFrom('r1', 'r2', 'r3'), entry(fc.option(reading)), {
    noNullPrototype: true,
  }),
  deleted: entry(fc.boolean()),
});

describe('two copies of a job', () => {
  test('come to the same in any order, however often they meet', () => {
    fc.assert(
      fc.property(job, job, job, (a, b, c) => {
        expect(merge(a, b)).toEqual(merge(b, a));
        expect(merge(merge(a, b), c)).toEqual(merge(a, merge(b, c)));
        expect(merge(a, merge(a, b))).toEqual(merge(a, b));
        expect(merge(a, a)).toEqual(a);
      }),
    );
  });

  test('keep what either of them has changed last', () => {
    const old = newJob('a', 1, 'Blue wagon');
    const here = { ...old, notes: { at: 5, value: 'slips' } };
    const there = { ...old, label: { at: 4, value: 'Blue wagon, hot' } };
    const both = merge(here, there);
    expect([both.label.value, both.notes.value]).toEqual(['Blue wagon, hot', 'slips']);
  });
});

describe('deleting', () => {
  const old = newJob('a', 10, 'Blue wagon');
  test('stays deleted beside an older copy, and comes back by undo', () => {
    const gone = withDeleted(old, 20, true);
    expect(isDeleted(merge(gone, old))).toBe(true);
    expect(isDeleted(merge(withDeleted(gone, 21, false), gone))).toBe(false);
  });
  test('leaves a mark with nothing in it, which still holds off an older copy', () => {
    const mark = markOnly(withDeleted(old, 20, true));
    expect(mark.label.value).toBe('');
    expect(isDeleted(merge(mark, old))).toBe(true);
  });
  test('loses against a change made afterwards somewhere else', () => {
    const gone = withDeleted(old, 20, true);
    const changed = { ...old, notes: { at: 25, value: 'and Reverse' } };
    expect(isDeleted(merge(gone, changed))).toBe(false);
  });
});

test('a change is later than what it replaces, also where the clock was set back', () => {
  expect(dated({ at: 100, value: 'a' }, 50, 'b')).toEqual({ at: 101, value: 'b' });
  expect(withDeleted(newJob('a', 100, 'x'), 50, true).deleted.at).toBe(101);
  expect(changedAt(newJob('a', 100, 'x'))).toBe(100);
  const told = { ...newJob('a', 100, 'x'), complaint: { at: 120, value: 'slips' } };
  expect(changedAt(told)).toBe(120);
});

test('readings stand in the order in which they were taken down, without those taken out', () => {
  const one: JobReading = { test: 'codes', phase: 'before', value: [], typed: '', units: 'us' };
  const ids = [timedId(5, () => 0.9), timedId(36 ** 5, () => 0), timedId(4, () => 0.5)];
  const entries = ids.map((id) => [id, { at: 1, value: one }] as const);
  const all = { ...newJob('a', 1, ''), readings: Object.fromEntries(entries) };
  expect(readingsOf(all).map(({ id }) => id)).toEqual([ids[2], ids[0], ids[1]]);
  const without = { ...all, readings: { ...all.readings, [ids[0] ?? '']: { at: 2, value: null } } };
  expect(readingsOf(without).map(({ id }) => id)).toEqual([ids[2], ids[1]]);
});

test('when a reading was entered is in its id, and in an id from elsewhere it is not', () => {
  expect(enteredAt(timedId(1_764_300_000_000))).toBe(1_764_300_000_000);
  expect(enteredAt('r1')).toBeUndefined();
});
