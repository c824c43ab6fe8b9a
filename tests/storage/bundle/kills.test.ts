import 'fake-indexeddb/auto';
import * as fc from 'fast-check';
import { afterEach, expect, test, vi } from 'vitest';
import type { Answer } from '../../../src/storage/answer.ts';
import { closeDevice, device, type Device } from '../../../src/storage/bundle/device.ts';
import { allFile, takeIn } from '../../../src/storage/bundle/take-in.ts';
import { newJob } from '../../../src/storage/jobs/job.ts';
import { fakeArea } from '../fake-area.ts';
import { aBundle } from './a-bundle.ts';
import { aDevice, close, on } from './a-device.ts';

const KILLS = 1000;
/** One phone is killed so often, then the next one. */
const KILLS_EACH = 50;
/** More steps than the longest thing has that is killed. */
const LONGEST = 110;

/**
 * A browser that dies at a step of a write: nothing after it is done, and what was not yet final is taken back, as databases do.
 * Steps are: opening, a transaction before and after it is final, each request before it is sent and after it is done, and each
 * write of browser storage.
 */
function killer(left: number) {
  let dead = false;
  const open = new Set<IDBTransaction>();
  const die = (): never => {
    throw new DOMException('The browser is gone.', 'AbortError');
  };
  function step(): void {
    if (dead) die();
    left -= 1;
    if (left > 0) return;
    dead = true;
    for (const transaction of open) {
      try {
        transaction.abort();
      } catch {
        // It was final already.
      }
    }
    die();
  }
  const wrap = (prototype: object, name: string, watched?: 'request' | 'transaction'): void => {
    const real = Reflect.get(prototype, name) as (...given: unknown[]) => unknown;
    vi.spyOn(prototype as Record<string, () => unknown>, name).mockImplementation(function (
      this: unknown,
      ...given: unknown[]
    ) {
      // The double of the database makes one of these by itself, in the middle of opening.
      if (given[1] !== 'versionchange') step();
      const made = real.apply(this, given);
      const stepThere = (): void => {
        try {
          step();
        } catch {
          // Whoever waits for it is gone as well.
        }
      };
      if (watched === 'transaction') {
        const transaction = made as IDBTransaction;
        // A reading one has nothing to take back.
        if (transaction.mode === 'readwrite') open.add(transaction);
        transaction.addEventListener('complete', stepThere);
      }
      if (watched === 'request') (made as IDBRequest).addEventListener('success', stepThere);
      return made;
    });
  };
  wrap(IDBFactory.prototype, 'open');
  wrap(IDBDatabase.prototype, 'transaction', 'transaction');
  for (const name of ['add', 'put', 'get', 'getAll', 'getAllKeys', 'delete'])
    wrap(IDBObjectStore.prototype, name, 'request');
  return { step, isDead: () => dead };
}

afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

const answer = (n: number): Answer => ({
  kind: 'prediction',
  sim: 'fluid',
  option: `answer ${n}`,
  confidence: 'certain',
  right: true,
});
const textsOf = (answers: readonly { answer: Answer }[]): string[] =>
  answers.map(({ answer: one }) => (one.kind === 'prediction' ? one.option : one.item));

test('1,000 kills in mid-write lose at most the answer being written, and never the rest', async () => {
  let one = aDevice();
  const plan = fc.sample(fc.noBias(fc.integer({ min: 1, max: 40 })), {
    numRuns: KILLS,
    seed: 20_261_129,
  });
  let there: string[] = [];
  let n = 0;
  let lost = 0;
  let finalButUntold = 0;
  for (const [kill, at] of plan.entries()) {
    if (kill % KILLS_EACH === 0) {
      await close(one);
      one = aDevice();
      there = [];
    }
    const { step, isDead } = killer(at);
    const area = {
      ...one.area,
      setItem: (key: string, value: string) => {
        step();
        one.area.setItem(key, value);
      },
    };
    const page = device(() => n, area);
    // Answers one after the other as a lesson gives them, with a lesson marked as done and a date set between.
    const promised: string[] = [];
    let writing = '';
    while (!isDead()) {
      n += 1;
      writing = `answer ${n}`;
      const status = await page.log.append({ at: n, answer: answer(n) });
      if (status === 'ok' && !isDead()) {
        promised.push(writing);
        writing = '';
      }
      page.keepers.progress.update(({ last }) => ({ done: [`lesson ${n}`], last }));
      page.keepers.plan.update((now) => ({ ...now, exam: '2027-01-01' }));
    }
    vi.restoreAllMocks();
    await closeDevice(page);

    const after = await on(one);
    const texts = textsOf(after.answers);
    const expected = [...there, ...promised];
    expect(texts.slice(0, expected.length)).toEqual(expected);
    const more = texts.slice(expected.length);
    expect(more.length).toBeLessThanOrEqual(1);
    if (more.length === 1) {
      expect(more).toEqual([writing]);
      finalButUntold += 1;
    } else if (writing !== '') lost += 1;
    for (const lesson of after.progress?.done ?? []) expect(lesson).toMatch(/^lesson \d+$/);
    expect([undefined, null, '2027-01-01']).toContain(after.plan?.exam);
    there = texts;
  }
  // The kills fell on every kind of moment: before, in and just after what makes a write final.
  expect(lost).toBeGreaterThan(100);
  expect(finalButUntold).toBeGreaterThan(5);
  expect(n).toBeGreaterThan(KILLS);
}, 60_000);

test('a kill while a file is taken in: all of its answers or none, no record in halves, and once more completes it', async () => {
  const own = { at: 5, answer: answer(0) };
  const file = { ...aBundle, jobs: [...aBundle.jobs, newJob('two', 6, 'Second car')] };
  const outcomes = new Map<string, number>();
  for (let at = 1; at <= LONGEST; at += 1) {
    const one = aDevice();
    await one.device.log.append(own);
    const { step, isDead } = killer(at);
    const area = {
      ...fakeArea(),
      getItem: one.area.getItem,
      setItem: (key: string, value: string) => {
        step();
        one.area.setItem(key, value);
      },
    };
    const page: Device = device(() => 10, area);
    await takeIn(page, file, allFile);
    vi.restoreAllMocks();
    await closeDevice(page);

    const after = await on(one);
    expect(after.answers[0]).toEqual(own);
    expect([1, 1 + file.answers.length]).toContain(after.answers.length);
    expect([0, 2]).toContain(after.jobs.length);
    for (const part of ['plan', 'progress', 'visits', 'columns', 'settings'] as const) {
      expect([null, file[part]]).toContainEqual(after[part]);
    }
    const outcome = [after.answers, after.jobs, after.sheets, after.meetings]
      .map(({ length }) => length)
      .join(' ');
    outcomes.set(outcome, (outcomes.get(outcome) ?? 0) + 1);
    if (isDead()) {
      expect((await takeIn(one.device, file, allFile)).faults).toEqual({});
      const whole = await on(one);
      expect(whole.answers).toEqual([own, ...file.answers]);
      expect(whole.jobs.map(({ id }) => id).toSorted()).toEqual(
        file.jobs.map(({ id }) => id).toSorted(),
      );
      expect(whole.plan).toEqual(file.plan);
    }
    await close(one);
  }
  expect([...outcomes.keys()]).toEqual(['1 0 0 0', '4 0 0 0', '4 2 0 0', '4 2 1 0', '4 2 1 2']);
}, 30_000);
