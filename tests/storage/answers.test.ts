import { expect, test } from 'vitest';
import type { StoreStatus } from '../../src/storage/connection.ts';
import type { Answer } from '../../src/storage/answer.ts';
import { answerKeeper } from '../../src/storage/answers.ts';

const prediction = (option: string): Answer => ({
  kind: 'prediction',
  sim: 'fluid',
  option,
  confidence: 'certain',
  right: true,
});
const leaving = (): void => undefined;
const optionOf = (answer: unknown): string => (answer as { option: string }).option;

test('keeps the order and the time of answers given while the log still loads', async () => {
  let arrive = (): void => undefined;
  const loading = new Promise<void>((done) => (arrive = done));
  const kept: string[] = [];
  let clock = 100;
  const keep = answerKeeper({
    leaving,
    now: () => clock,
    load: async () => {
      await loading;
      return {
        answerLog: () => ({
          append: ({ at, answer }: { at: number; answer: unknown }) => {
            kept.push(`${optionOf(answer)} at ${at}`);
            // The later one is the quicker one; it still has to wait.
            return new Promise<StoreStatus>((done) =>
              setTimeout(() => done('ok'), kept.length === 1 ? 20 : 0),
            );
          },
          database: () => Promise.reject(new Error('not asked for here')),
          whole: () => Promise.reject(new Error('not asked for here')),
          close: () => Promise.resolve(),
        }),
      };
    },
  });
  const all = ['one', 'two', 'three'].map((option) => {
    clock += 1;
    return keep(prediction(option));
  });
  expect(kept).toEqual([]);
  arrive();
  expect(await Promise.all(all)).toEqual(['ok', 'ok', 'ok']);
  expect(kept).toEqual(['one at 101', 'two at 102', 'three at 103']);
});

test('says when the part that keeps answers did not load, and asks for it again at the next answer', async () => {
  let tries = 0;
  const keep = answerKeeper({
    leaving,
    load: () => {
      tries += 1;
      return Promise.reject(new Error('offline'));
    },
  });
  expect(await keep(prediction('one'))).toBe('unloaded');
  expect(await keep(prediction('two'))).toBe('unloaded');
  expect(tries).toBe(2);
});

test('nothing is loaded before the first answer', () => {
  let tries = 0;
  answerKeeper({
    load: () => {
      tries += 1;
      return Promise.reject(new Error('offline'));
    },
  });
  expect(tries).toBe(0);
});

test('what is on its way when the page goes is left behind as it would have been stored', async () => {
  let go = (): void => undefined;
  let arrive = (): void => undefined;
  const left: unknown[] = [];
  const keep = answerKeeper({
    now: () => 100,
    leaving: (listener) => (go = listener),
    behind: { put: (records) => left.push(...records) > 0 },
    load: () => new Promise((_, reject) => (arrive = () => reject(new Error('offline')))),
  });
  const kept = keep(prediction('one'));
  await Promise.resolve();
  go();
  expect(left).toEqual([{ v: 1, at: 100, answer: prediction('one') }]);
  arrive();
  await kept;
  go();
  expect(left, 'what has come to its end is left no more').toHaveLength(1);
});
