import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { openDB } from 'idb';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { answerLog } from '../../src/storage/answer-log.ts';
import { STORE, steps, type Step } from '../../src/storage/answer-steps.ts';
import type { Answer } from '../../src/storage/answer.ts';
import { readAnswers } from '../../src/storage/read-answers.ts';
import { fakeArea } from './fake-area.ts';
import version1 from './answers-version-1.json' with { type: 'json' };

const NAME = 'hot-clutch:answers';
const answer = (option: string): Answer => ({
  kind: 'prediction',
  sim: 'fluid',
  option,
  confidence: 'certain',
  right: true,
});
const entry = (option: string, at = 0) => ({ at, answer: answer(option) });
const options = async (): Promise<string[]> =>
  (await readAnswers()).answers.map(({ answer }) =>
    answer.kind === 'prediction' ? answer.option : answer.item,
  );
/** What a browser's own method does, to be done with something added. */
const method = (name: 'add' | 'put' | 'get') =>
  Reflect.get(IDBObjectStore.prototype, name) as (
    this: IDBObjectStore,
    value: unknown,
  ) => IDBRequest<IDBValidKey>;
/** As it lies in the database. */
async function raw(change?: (add: (record: unknown) => Promise<unknown>) => Promise<unknown>) {
  const log = answerLog();
  const database = await log.database();
  await change?.((record) => database.add(STORE, record));
  const all: unknown[] = await database.getAll(STORE);
  await log.close();
  return all;
}

beforeEach(() => {
  vi.stubGlobal('indexedDB', new IDBFactory());
});
afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

describe('answers', () => {
  test('come back in the order given, numbered, with what the clock said', async () => {
    const log = answerLog();
    for (const [i, option] of ['one', 'two', 'three'].entries()) {
      expect(await log.append(entry(option, 1e12 + i))).toBe('ok');
    }
    expect(await readAnswers()).toEqual({
      status: 'ok',
      damaged: [],
      answers: ['one', 'two', 'three'].map((option, i) => ({
        n: i + 1,
        at: 1e12 + i,
        clockSetBack: false,
        answer: answer(option),
      })),
    });
    await log.close();
  });

  test('of a device whose clock was set back keep their order, and say where', async () => {
    const log = answerLog();
    const hour = 3.6e6;
    for (const [option, at] of [
      ['before', 10 * hour],
      ['set back', 2 * hour],
      ['after', 2 * hour + 9000],
      ['a hair back', 2 * hour + 8500],
    ] as const) {
      await log.append(entry(option, at));
    }
    const { answers } = await readAnswers();
    expect(answers.map(({ clockSetBack }) => clockSetBack)).toEqual([false, true, false, false]);
    expect(await options()).toEqual(['before', 'set back', 'after', 'a hair back']);
    await log.close();
  });

  test('of two tabs at once are all there', async () => {
    const [here, there] = [answerLog(), answerLog()];
    const kept = await Promise.all(
      Array.from({ length: 40 }, (_, i) => (i % 2 ? here : there).append(entry(`a${i}`))),
    );
    expect(new Set(kept)).toEqual(new Set(['ok']));
    expect((await options()).toSorted()).toEqual(
      Array.from({ length: 40 }, (_, i) => `a${i}`).toSorted(),
    );
    await Promise.all([here.close(), there.close()]);
  });

  test('none yet is no fault', async () => {
    expect(await readAnswers()).toEqual({ status: 'ok', answers: [], damaged: [] });
  });
});

describe('answers that a page left behind', () => {
  const leave = (...left: unknown[]): ReturnType<typeof fakeArea> => {
    const area = fakeArea();
    vi.stubGlobal('localStorage', area);
    for (const [i, text] of left.entries())
      area.kept.set(`${NAME}:left:${i}`, JSON.stringify(text));
    return area;
  };
  const left = (option: string, at: number) => ({ v: 1, ...entry(option, at) });

  test('come to the end where they did not arrive, and are not doubled where they did', async () => {
    const log = answerLog();
    await log.append(entry('arrived', 5));
    await log.close();
    const twice = left('lost', 6);
    const area = leave([left('arrived', 5), twice], [twice], [left('of another tab', 7)]);
    expect(await options()).toEqual(['arrived', 'lost', 'of another tab']);
    expect(area.kept.size).toBe(0);
    expect(await options()).toEqual(['arrived', 'lost', 'of another tab']);
  });

  test('come before the next answer', async () => {
    leave([left('lost', 6)]);
    const log = answerLog();
    expect(await log.append(entry('next', 8))).toBe('ok');
    await log.close();
    expect(await options()).toEqual(['lost', 'next']);
  });

  test('wait where they cannot be taken back, and hold nothing up', async () => {
    const area = leave([left('lost', 6)]);
    vi.spyOn(IDBObjectStore.prototype, 'getAll').mockImplementationOnce(() => {
      throw new DOMException('refused by the test', 'DataError');
    });
    const log = answerLog();
    expect(await log.append(entry('next', 8))).toBe('ok');
    await log.close();
    expect(area.kept.size).toBe(1);
    expect(await options()).toEqual(['next', 'lost']);
  });

  test('what is no answer is kept as it lies, and told of', async () => {
    leave([null, 'a text', left('lost', 6)]);
    const { answers, damaged } = await readAnswers();
    expect(answers).toHaveLength(1);
    expect(damaged.map(({ raw: one }) => one)).toEqual([null, 'a text']);
  });
});

describe('a fault', () => {
  test('a kill in the middle of a write loses that answer and no other, and the next is kept', async () => {
    const log = answerLog();
    await log.append(entry('before'));
    const real = method('add');
    vi.spyOn(IDBObjectStore.prototype, 'add').mockImplementationOnce(function (
      this: IDBObjectStore,
      value: unknown,
    ) {
      const request = real.call(this, value);
      // What a database does with a write whose tab died: it takes it back.
      this.transaction.abort();
      this.transaction.db.close();
      return request;
    });
    expect(await log.append(entry('killed'))).not.toBe('ok');
    expect(await log.append(entry('after'))).toBe('ok');
    expect(await options()).toEqual(['before', 'after']);
    await log.close();
  });

  test('a connection that the browser closed in silence is opened anew', async () => {
    const log = answerLog();
    await log.append(entry('one'));
    (await log.database()).close();
    expect(await log.append(entry('two'))).toBe('ok');
    expect(await options()).toEqual(['one', 'two']);
    await log.close();
  });

  test('no room is said, at once or when the write is to be made final, and what was there stays', async () => {
    const log = answerLog();
    await log.append(entry('before'));
    const spy = vi.spyOn(IDBObjectStore.prototype, 'add');
    spy.mockImplementationOnce(() => {
      throw new DOMException('refused by the test', 'QuotaExceededError');
    });
    expect(await log.append(entry('refused'))).toBe('full');
    const real = method('put');
    spy.mockImplementationOnce(function (this: IDBObjectStore, value: unknown) {
      const request = real.call(this, value);
      request.addEventListener('success', () => {
        (this.transaction as unknown as { _abort(name: string): void })._abort(
          'QuotaExceededError',
        );
      });
      return request;
    });
    expect(await log.append(entry('rolled back'))).toBe('full');
    expect(await options()).toEqual(['before']);
    await log.close();
  });

  test.each([
    ['there is no IndexedDB', () => undefined],
    [
      'it is refused',
      () => ({
        open: () => {
          throw new DOMException('refused by the test', 'SecurityError');
        },
      }),
    ],
    [
      'a private window refuses it',
      () => ({
        open: () => {
          throw new DOMException('refused by the test', 'InvalidStateError');
        },
      }),
    ],
  ])('blocked is said where %s, to who writes and who reads', async (_, indexedDB) => {
    vi.stubGlobal('indexedDB', indexedDB());
    expect(await answerLog().append(entry('x'))).toBe('blocked');
    expect(await readAnswers()).toEqual({ status: 'blocked', answers: [], damaged: [] });
  });

  test('an open that never comes back is given up, and let go should it come later', async () => {
    const real = indexedDB;
    let late = (): void => undefined;
    vi.stubGlobal('indexedDB', {
      open: (name: string, version: number) => {
        const request = real.open(name, version);
        const add = request.addEventListener.bind(request);
        request.addEventListener = ((type: string, listener: () => void) => {
          if (type === 'success') late = listener;
          else add(type, listener);
        }) as never;
        return request;
      },
    });
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
    const append = answerLog().append(entry('x'));
    await vi.advanceTimersByTimeAsync(9000);
    vi.useRealTimers();
    expect(await append).toBe('busy');
    late();
  });
});

describe('a damaged record', () => {
  const bad = [
    'rubbish',
    { v: 1, at: 3 },
    { v: 1, at: 'noon', answer: answer('x') },
    { v: 1, at: 3, answer: { ...answer('x'), confidence: 'quite' } },
    { v: 1, at: 3, answer: { ...answer('x'), more: 1 } },
    { v: 99, at: 3, answer: answer('x'), from: 'the future' },
    null,
  ];

  test.each(bad)('%j hides nothing, is told of, and is never written over', async (record) => {
    const log = answerLog();
    await log.append(entry('before'));
    await raw((add) => add(record));
    await log.append(entry('after'));
    const read = await readAnswers();
    expect(read.answers.map(({ n }) => n)).toEqual([1, 3]);
    expect(read.damaged).toEqual([{ n: 2, raw: record }]);
    expect((await raw())[1]).toEqual(record);
    await log.close();
  });

  test('one that the browser itself cannot load costs the others nothing', async () => {
    const log = answerLog();
    for (const option of ['one', 'two', 'three']) await log.append(entry(option));
    vi.spyOn(IDBObjectStore.prototype, 'getAll').mockImplementation(() => {
      throw new DOMException('refused by the test', 'DataError');
    });
    const real = method('get');
    vi.spyOn(IDBObjectStore.prototype, 'get').mockImplementation(function (
      this: IDBObjectStore,
      key: IDBValidKey | IDBKeyRange,
    ) {
      if (key === 2) throw new DOMException('refused by the test', 'DataError');
      return real.call(this, key);
    });
    const { answers, damaged } = await readAnswers();
    expect(answers.map(({ n }) => n)).toEqual([1, 3]);
    expect(damaged).toEqual([{ n: 2, raw: undefined }]);
    await log.close();
  });
});

describe('another version', () => {
  /** What a next version might do: an index, and a field by another name. */
  const next: readonly Step[] = [
    ...steps,
    {
      layout: (database) => void database.createObjectStore('aside'),
      record: (old) => {
        const { at, answer } = old as { at: number; answer: unknown };
        return { v: 2, at: at + 1, answer };
      },
    },
  ];

  // As version 1 wrote it. Kept for ever.
  test('what version 1 wrote is read', async () => {
    await raw((add) => Promise.all(version1.map(add)));
    const { answers, damaged } = await readAnswers();
    expect(damaged).toEqual([]);
    expect(answers.map(({ answer }) => answer)).toEqual(version1.map(({ answer }) => answer));
    expect(answers.map(({ at }) => at)).toEqual(version1.map(({ at }) => at));
  });

  test('old records are read through the steps since, and lie there as they were', async () => {
    await raw((add) => Promise.all(version1.map(add)));
    const { answers, damaged } = await readAnswers(answerLog(next), next);
    expect(damaged).toEqual([]);
    expect(answers.map(({ at }) => at)).toEqual(version1.map(({ at }) => at + 1));
    const database = await openDB(NAME, 2);
    expect(await database.getAll(STORE)).toEqual(version1);
    database.close();
  });

  test('a newer tab may upgrade while an older one has the log open; the older one then says so', async () => {
    const [older, newer] = [answerLog(), answerLog(next)];
    expect(await older.append(entry('older'))).toBe('ok');
    expect(await newer.append(entry('newer'))).toBe('ok');
    expect(await older.append(entry('too late'))).toBe('newer');
    expect((await readAnswers()).status).toBe('newer');
    expect((await readAnswers(newer, next)).answers).toHaveLength(2);
  });

  test('a tab that will not let go is not waited for', async () => {
    const held = await openDB(NAME, 1, { upgrade: (db) => steps[0]?.layout?.(db as never) });
    expect(await answerLog(next).append(entry('x'))).toBe('busy');
    held.close();
  });
});
