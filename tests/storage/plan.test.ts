import { expect, test } from 'vitest';
import { planKeeper } from '../../src/storage/plan.ts';
import { fakeArea } from './fake-area.ts';

test('what was set comes back, and at first there is no exam and a round takes five minutes', () => {
  const keeper = planKeeper(fakeArea());
  expect(keeper.read()).toEqual({
    data: { exam: null, minutes: 5, round: null },
    status: 'nothing',
  });
  const round = { day: 20_454, seed: 7, items: [{ id: 'a', lesson: 'l' }] };
  keeper.update((now) => ({ ...now, exam: '2027-03-01', minutes: 20, round }));
  expect(keeper.read()).toEqual({
    data: { exam: '2027-03-01', minutes: 20, round },
    status: 'ok',
  });
});

test('a browser that keeps nothing says so and breaks nothing', () => {
  const area = fakeArea();
  area.failWrites = { on: /plan/u, as: 'SecurityError' };
  expect(planKeeper(area).update((now) => ({ ...now, minutes: 10 }))).toBe('blocked');
  area.failWrites = { on: /plan/u, as: 'QuotaExceededError' };
  expect(planKeeper(area).update((now) => ({ ...now, minutes: 10 }))).toBe('full');
});

const good = { exam: null, minutes: 5, round: null };
test.each([
  null,
  { ...good, exam: 'soon' },
  { ...good, exam: 20_454 },
  { ...good, minutes: 7 },
  { ...good, round: { day: 1.5, seed: 1, items: [] } },
  { ...good, round: { day: 1, seed: null, items: [] } },
  { ...good, round: { day: 1, seed: 1, items: [{ id: 'a' }] } },
  { ...good, round: 'none' },
])('what is not a plan is not read as one: %j', (data) => {
  const area = fakeArea();
  area.setItem('hot-clutch:plan:a', JSON.stringify({ v: 1, n: 1, data }));
  area.setItem('hot-clutch:plan:slot', 'a');
  expect(planKeeper(area).read().status).toBe('unreadable');
});
