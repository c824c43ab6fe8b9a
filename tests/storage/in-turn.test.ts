import { afterEach, expect, test, vi } from 'vitest';
import { inTurn } from '../../src/storage/in-turn.ts';

afterEach(() => {
  vi.unstubAllGlobals();
  vi.useRealTimers();
});

test('waits for the tab that has the turn', async () => {
  const order: string[] = [];
  let release = (): void => undefined;
  const held = navigator.locks.request('marks', async () => {
    await new Promise<void>((done) => (release = done));
    order.push('the other');
  });
  const mine = inTurn('marks', () => order.push('mine'));
  const elsewhere = inTurn('other things', () => order.push('elsewhere'));
  await elsewhere;
  release();
  await Promise.all([held, mine]);
  expect(order).toEqual(['elsewhere', 'the other', 'mine']);
});

test('does not wait for ever for a tab that was frozen', async () => {
  let release = (): void => undefined;
  const held = navigator.locks.request(
    'marks',
    () => new Promise<void>((done) => (release = done)),
  );
  expect(await inTurn('marks', () => 'done')).toBe('done');
  release();
  await held;
}, 5000);

test.each([
  ['there are no locks', undefined],
  ['they are refused', { request: () => Promise.reject(new DOMException('', 'SecurityError')) }],
])('does the work, once, where %s', async (_, locks) => {
  vi.stubGlobal('navigator', { locks });
  const work = vi.fn(() => 'done');
  expect(await inTurn('marks', work)).toBe('done');
  expect(work).toHaveBeenCalledOnce();
});
