import 'fake-indexeddb/auto';
import { afterEach, describe, expect, test, vi } from 'vitest';
import type { Answer } from '../../../src/storage/answer.ts';
import type { Bundle } from '../../../src/storage/bundle/bundle.ts';
import { bringsNothing, compare, toChoose } from '../../../src/storage/bundle/compare.ts';
import { gather } from '../../../src/storage/bundle/device.ts';
import { allFile, allHere, takeIn } from '../../../src/storage/bundle/take-in.ts';
import { dated, withDeleted, type Job } from '../../../src/storage/jobs/job.ts';
import { readAnswers } from '../../../src/storage/read-answers.ts';
import { MOST_VISITS } from '../../../src/storage/visits.ts';
import { aBundle, emptyBundle } from './a-bundle.ts';
import { aDevice, contentOf, filled, NOW, on } from './a-device.ts';

afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

const [firstAnswer] = aBundle.answers;
const answerAt = (at: number): Bundle['answers'][number] => ({
  at,
  answer: firstAnswer?.answer as Answer,
});
const [aJob] = aBundle.jobs as readonly [Job];

describe('a change of phone', () => {
  test('brings everything to a fresh one, and a second time nothing', async () => {
    const phone = aDevice();
    const taken = await takeIn(phone.device, aBundle, allHere);
    expect(taken.faults).toEqual({});
    expect(await on(phone)).toEqual(contentOf(aBundle));
    const { bundle } = await gather(phone.device);
    expect(bringsNothing(compare(bundle, aBundle, NOW))).toBe(true);
    await takeIn(phone.device, aBundle, allFile);
    expect(await on(phone)).toEqual(contentOf(aBundle));
  });

  test('is taken back whole', async () => {
    const phone = aDevice();
    const { undo } = await takeIn(phone.device, aBundle, allHere);
    expect(await undo()).toEqual({});
    const after = await on(phone);
    expect(after.answers).toEqual([]);
    expect(after.jobs).toEqual([]);
    expect(after.sheets).toEqual([]);
    expect(after.meetings).toEqual([]);
    expect(after.progress).toEqual({ done: [], last: null });
    expect(after.plan).toEqual({ exam: null, minutes: 5, round: null });
  });

  test('taken back leaves what has been done since', async () => {
    const phone = aDevice();
    const { undo } = await takeIn(phone.device, aBundle, allHere);
    await phone.device.log.append({ at: NOW, answer: answerAt(NOW).answer });
    phone.device.keepers.plan.update((plan) => ({ ...plan, exam: '2027-05-05' }));
    await phone.device.jobs.write([
      { ...aJob, notes: dated(aJob.notes, NOW, 'Called the customer.') },
    ]);
    await undo();
    const after = await on(phone);
    expect(after.answers).toEqual([answerAt(NOW)]);
    expect(after.plan?.exam).toBe('2027-05-05');
    expect(after.jobs[0]?.notes.value).toBe('Called the customer.');
    expect(after.sheets).toEqual([]);
  });
});

describe('two devices that both have something', () => {
  const here: Bundle = {
    ...aBundle,
    answers: [...aBundle.answers, answerAt(1_764_000_500_000)],
    plan: { exam: '2027-06-01', minutes: 20, round: null },
    progress: {
      done: ['hot-fluid-thin-fluid'],
      last: { lesson: 'hot-fluid-thin-fluid', section: null },
    },
    settings: { units: 'us', theme: 'system' },
    visits: { byCase: { 'case-1': { steps: [], causes: [], repairs: [], serial: 9 } } },
    jobs: [{ ...aJob, notes: { at: 1, value: 'Older words' } }],
    sheets: [],
    meetings: aBundle.meetings.map((one) =>
      one.deleted.value
        ? one
        : { ...one, plan: { at: 1, value: { title: 'Cold seals', minutes: 5, scenes: [] } } },
    ),
  };
  const file: Bundle = {
    ...aBundle,
    answers: [answerAt(1_763_000_000_000), ...aBundle.answers, answerAt(1_764_000_700_000)],
  };

  test('are compared before anything is done', async () => {
    const one = await filled(here);
    const before = await on(one);
    const { bundle } = await gather(one.device);
    const compared = compare(bundle, file, NOW);
    expect(compared.answers).toEqual({ added: 2, same: 3, hereOnly: 1, ahead: 0 });
    expect(compared.lessons).toMatchObject({
      added: ['what-pressure-does', 'thin-gap-open-hole'],
      hereOnly: ['hot-fluid-thin-fluid'],
    });
    expect(compared.cases).toMatchObject({ differ: ['case-1'], dropped: 0 });
    expect(compared.jobs).toMatchObject({ added: [], replaced: ['Bay 3, slips hot'], deleted: [] });
    expect(compared.sheets).toMatchObject({ added: ['Shop van'] });
    expect(compared.meetings).toMatchObject({ added: [], replaced: ['Cold seals'], deleted: [] });
    expect(toChoose(compared)).toEqual(['plan', 'settings', 'cases', 'jobs', 'meetings']);
    expect(bringsNothing(compared)).toBe(false);
    expect(await on(one)).toEqual(before);
  });

  test('lose nothing here unless it is chosen', async () => {
    const one = await filled(here);
    await takeIn(one.device, file, allHere);
    const after = await on(one);
    expect(after.answers.map(({ at }) => at)).toEqual(
      [...file.answers.map(({ at }) => at), 1_764_000_500_000].toSorted((a, b) => a - b),
    );
    expect(after.progress?.done).toEqual([
      'hot-fluid-thin-fluid',
      'what-pressure-does',
      'thin-gap-open-hole',
    ]);
    expect(after.progress?.last).toEqual(here.progress?.last);
    for (const part of ['plan', 'settings', 'visits', 'jobs', 'meetings'] as const) {
      expect(after[part]).toEqual(here[part]);
    }
    expect(after.sheets).toEqual(aBundle.sheets);
  });

  test('what is chosen comes from the file, and can be taken back', async () => {
    const one = await filled(here);
    const { undo } = await takeIn(one.device, file, { ...allFile, settings: 'here' });
    const after = await on(one);
    expect(after.plan).toEqual(file.plan);
    expect(after.visits).toEqual(file.visits);
    expect(after.settings).toEqual(here.settings);
    expect(after.jobs).toEqual(file.jobs);
    expect(await undo()).toEqual({});
    expect(await on(one)).toEqual(contentOf(here));
  });

  test('come to one log in one order, and no clock is said to have been set back', async () => {
    const one = await filled(here);
    await takeIn(one.device, file, allHere);
    const first = await readAnswers(one.device.log);
    const other = await filled(file);
    await takeIn(other.device, here, allHere);
    const second = await readAnswers(other.device.log);
    expect(second.answers.map(({ at }) => at)).toEqual(first.answers.map(({ at }) => at));
    expect(first.answers.some(({ clockSetBack }) => clockSetBack)).toBe(false);
  });

  test('a job deleted there and standing here is told by name, and goes only if chosen', async () => {
    const one = await filled(aBundle);
    const gone = { ...aBundle, jobs: [withDeleted(aJob, NOW, true)] };
    const { bundle } = await gather(one.device);
    const compared = compare(bundle, gone, NOW);
    expect(compared.jobs.deleted).toEqual(['Bay 3, slips hot']);
    expect(toChoose(compared)).toEqual(['jobs']);
    await takeIn(one.device, gone, allHere);
    expect((await on(one)).jobs).toEqual(aBundle.jobs);
    const { undo } = await takeIn(one.device, gone, allFile);
    expect((await on(one)).jobs[0]?.deleted.value).toBe(true);
    await undo();
    expect((await on(one)).jobs).toEqual(aBundle.jobs);
  });

  test('a job that only gains asks nothing', () => {
    const fuller = { ...aBundle, jobs: [{ ...aJob, repair: dated(aJob.repair, NOW, 'New seal') }] };
    const compared = compare(aBundle, fuller, NOW);
    expect(compared.jobs).toMatchObject({ completed: ['Bay 3, slips hot'], replaced: [] });
    expect(toChoose(compared)).toEqual([]);
    expect(bringsNothing(compared)).toBe(false);
  });

  test('more cars than are remembered: how many go is said before', () => {
    const cars = (from: number, count: number) => ({
      byCase: Object.fromEntries(
        Array.from({ length: count }, (_, i) => [
          `made-${from + i}`,
          { steps: [], causes: [], repairs: [], serial: from + i },
        ]),
      ),
    });
    const compared = compare(
      { ...emptyBundle, visits: cars(0, 100) },
      { ...emptyBundle, visits: cars(90, 60) },
      NOW,
    );
    expect(compared.cases.added).toHaveLength(50);
    expect(compared.cases.dropped).toBe(150 - MOST_VISITS);
  });

  test('answers dated after today are counted: the clock of one device is wrong', () => {
    const ahead = { ...emptyBundle, answers: [answerAt(NOW + 40 * 86_400_000), answerAt(NOW)] };
    expect(compare(emptyBundle, ahead, NOW).answers).toMatchObject({ added: 2, ahead: 1 });
  });
});

describe('two tabs', () => {
  test('that take the same file in at once do not double an answer', async () => {
    const one = aDevice();
    const { device } = await import('../../../src/storage/bundle/device.ts');
    const tabs = [one.device, ...Array.from({ length: 3 }, () => device(() => NOW, one.area))];
    const all = await Promise.all(tabs.map((tab) => takeIn(tab, aBundle, allHere)));
    expect(all.map(({ faults }) => faults)).toEqual([{}, {}, {}, {}]);
    expect((await on(one)).answers).toEqual(aBundle.answers);
  });

  test('one that answers while the other takes a file in loses nothing', async () => {
    const one = aDevice();
    const { device } = await import('../../../src/storage/bundle/device.ts');
    const other = device(() => NOW, one.area);
    const answering = Promise.all(
      Array.from({ length: 20 }, (_, i) =>
        other.log.append({ at: NOW + i, answer: answerAt(0).answer }),
      ),
    );
    const [statuses, { faults }] = await Promise.all([
      answering,
      takeIn(one.device, aBundle, allHere),
    ]);
    expect(new Set(statuses)).toEqual(new Set(['ok']));
    expect(faults).toEqual({});
    expect((await on(one)).answers).toHaveLength(20 + aBundle.answers.length);
  });
});

describe('a store that does not take it', () => {
  test('full: all answers of the file or none, what was there stands, and it can be tried again', async () => {
    const one = await filled({ ...emptyBundle, answers: [answerAt(5)] });
    const real = Reflect.get<IDBObjectStore, 'add'>(IDBObjectStore.prototype, 'add');
    let count = 0;
    const spy = vi.spyOn(IDBObjectStore.prototype, 'add').mockImplementation(function (
      this: IDBObjectStore,
      value: unknown,
      key?: IDBValidKey,
    ) {
      count += 1;
      if (count === 2) throw new DOMException('refused by the test', 'QuotaExceededError');
      return real.call(this, value, key);
    });
    const { faults } = await takeIn(one.device, aBundle, allHere);
    expect(faults).toEqual({ answers: 'full' });
    spy.mockRestore();
    expect((await on(one)).answers).toEqual([answerAt(5)]);
    expect((await takeIn(one.device, aBundle, allHere)).faults).toEqual({});
    expect((await on(one)).answers).toHaveLength(4);
  });

  test('browser storage is full: said, and the rest is in', async () => {
    const one = aDevice();
    one.area.failWrites = { on: /./, as: 'QuotaExceededError' };
    expect((await takeIn(one.device, aBundle, allHere)).faults).toEqual({ parts: 'full' });
    expect((await on(one)).answers).toHaveLength(3);
  });

  test.each([
    ['a private window refuses it', 'InvalidStateError'],
    ['it is blocked', 'SecurityError'],
  ])('%s: said for each place, and nothing is thrown', async (_, name) => {
    const one = aDevice();
    const refuse = () => {
      throw new DOMException('refused by the test', name);
    };
    vi.stubGlobal('indexedDB', { open: refuse });
    one.area.failWrites = { on: /./, as: 'SecurityError' };
    const { faults } = await takeIn(one.device, aBundle, allHere);
    expect(faults).toEqual({
      answers: 'blocked',
      jobs: 'blocked',
      sheets: 'blocked',
      meetings: 'blocked',
      parts: 'blocked',
    });
    const gathered = await gather(one.device);
    expect(gathered.faults).toMatchObject({ answers: 'blocked', jobs: 'blocked' });
    expect(gathered.bundle.answers).toEqual([]);
  });

  test('what cannot be read here stays where it lies, beside what comes', async () => {
    const one = await filled({ ...emptyBundle, answers: [answerAt(5)] });
    const database = await one.device.log.database();
    await database.add('answers', 'rubbish');
    await takeIn(one.device, aBundle, allHere);
    const { answers, damaged } = await readAnswers(one.device.log);
    expect(answers).toHaveLength(4);
    expect(damaged.map(({ raw }) => raw)).toEqual(['rubbish']);
    expect((await gather(one.device)).unreadable).toBe(1);
  });

  test('a clock set back in the file stays in its order and is told', async () => {
    const hour = 3_600_000;
    const file = { ...emptyBundle, answers: [answerAt(10 * hour), answerAt(2 * hour)] };
    const one = await filled({ ...emptyBundle, answers: [answerAt(11 * hour)] });
    await takeIn(one.device, file, allHere);
    const { answers } = await readAnswers(one.device.log);
    expect(answers.map(({ at }) => at / hour)).toEqual([10, 2, 11]);
    expect(answers.map(({ clockSetBack }) => clockSetBack)).toEqual([false, true, false]);
  });
});
