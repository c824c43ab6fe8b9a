import type { Figure } from './form.ts';
import { unitTests } from './run.ts';

/** A fault that is played in unit tests: which of them, and what it means if all of them pass. */
interface Played {
  readonly what: string;
  readonly bar: string;
  readonly files: readonly string[];
  /** Parts of their names; a file may hold tests of other things. */
  readonly tests: readonly string[];
}

const PLAYED: readonly Played[] = [
  {
    what: 'The browser dies in the middle of a write, 1,000 times: answers lost but the one being written',
    bar: '0',
    files: ['tests/storage/bundle/kills.test.ts'],
    tests: ['1,000 kills in mid-write'],
  },
  {
    what: 'The browser dies at each of 60 steps while a file is taken in: answers lost or doubled, jobs left in halves',
    bar: '0',
    files: ['tests/storage/bundle/kills.test.ts'],
    tests: ['a kill while a file is taken in'],
  },
  {
    what: 'The device is full: things lost, or not kept without a word',
    bar: '0',
    files: [
      'tests/storage/envelope.test.ts',
      'tests/storage/answer-log.test.ts',
      'tests/storage/jobs/job-store.test.ts',
      'tests/storage/bundle/take-in.test.ts',
    ],
    tests: ['full disk', 'no room', 'full: all answers', 'browser storage is full'],
  },
  {
    what: 'The browser keeps nothing: pages that break, or do not say so',
    bar: '0',
    files: [
      'tests/storage/envelope.test.ts',
      'tests/storage/boot.test.ts',
      'tests/storage/plan.test.ts',
      'tests/storage/jobs/job-store.test.ts',
    ],
    tests: ['blocks storage', 'blocked storage', 'keeps nothing'],
  },
  {
    what: 'What was kept is damaged: damaged things written over, good ones lost with them',
    bar: '0',
    files: [
      'tests/storage/envelope.test.ts',
      'tests/storage/answer-log.test.ts',
      'tests/storage/jobs/job-store.test.ts',
      'tests/storage/jobs/job-file.test.ts',
      'tests/storage/bundle/take-in.test.ts',
    ],
    tests: ['unreadable', 'could not read', 'damaged', 'cannot be read', 'cannot load'],
  },
  {
    what: 'Two tabs write at once: answers, marks and readings lost or doubled',
    bar: '0',
    files: [
      'tests/storage/envelope.test.ts',
      'tests/storage/answer-log.test.ts',
      'tests/storage/in-turn.test.ts',
      'tests/storage/jobs/job-store.test.ts',
      'tests/storage/bundle/take-in.test.ts',
    ],
    tests: ['second tab', 'two tabs', 'waits for the tab', 'a tab that was frozen', 'another tab'],
  },
  {
    what: 'The clock is set back: answers out of their order, changes that lose against older ones',
    bar: '0',
    files: [
      'tests/storage/answer-log.test.ts',
      'tests/storage/jobs/job.test.ts',
      'tests/storage/bundle/missing-answers.test.ts',
      'tests/storage/bundle/take-in.test.ts',
    ],
    tests: ['clock'],
  },
  {
    what: 'Files and records of every older form: not read any more',
    bar: '0',
    files: [
      'tests/storage/answer-log.test.ts',
      'tests/storage/rehearsals.test.ts',
      'tests/storage/log-columns.test.ts',
      'tests/storage/jobs/job-file.test.ts',
      'tests/storage/sheets/sheet-file.test.ts',
      'tests/storage/bundle/read-bundle.test.ts',
    ],
    tests: ['version 1'],
  },
];

/** What the tests of storage play; pages in a browser are in tests/quality/faults.spec.ts. */
export function faults(): Figure[] {
  const ended = unitTests(['tests/storage']);
  return PLAYED.map(({ what, bar, files, tests }) => {
    const mine = [...ended].filter(([name]) => tests.some((part) => name.includes(part)));
    const failed = mine.filter(([, passed]) => !passed);
    if (mine.length === 0) throw new Error(`No test plays this any more: ${what}`);
    return {
      what,
      value: failed.length === 0 ? '0' : `failed: ${failed.map(([name]) => name).join('; ')}`,
      bar,
      met: failed.length === 0,
      command: `npx vitest run ${files.join(' ')}`,
    };
  });
}
