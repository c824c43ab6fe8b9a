import { expect, test } from 'vitest';
import { MOST_VISITS, visitKeeper, withVisit, type Visits } from '../../src/storage/visits.ts';
import { fakeArea } from './fake-area.ts';

const visit = { steps: ['test:codes'], causes: ['transferSeal'], repairs: [] };

test('what was done on a car comes back, and the car that was touched last is kept longest', () => {
  const keeper = visitKeeper(fakeArea());
  expect(keeper.read().status).toBe('nothing');
  keeper.update((now) => withVisit(now, 'a', visit));
  keeper.update((now) =>
    withVisit(now, 'a', { ...visit, ended: { verdict: 'solved', minutes: 34 } }),
  );
  expect(keeper.read().data.byCase['a']).toMatchObject({
    steps: ['test:codes'],
    ended: { verdict: 'solved', minutes: 34 },
  });
  let visits: Visits = { byCase: {} };
  for (let i = 0; i < MOST_VISITS + 5; i += 1) visits = withVisit(visits, `car-${i}`, visit);
  visits = withVisit(visits, 'car-10', visit);
  expect(Object.keys(visits.byCase)).toHaveLength(MOST_VISITS);
  expect(visits.byCase['car-0']).toBeUndefined();
  expect(visits.byCase['car-10']).toBeDefined();
});

test.each([
  { byCase: { a: { steps: [1], causes: [], repairs: [], serial: 0 } } },
  { byCase: { a: { steps: [], causes: [], repairs: [], serial: -1 } } },
  { byCase: { a: { ...visit, serial: 0, ended: { verdict: 'perhaps', minutes: 1 } } } },
  { byCase: [] },
  { byCase: null },
])('what is not a visit is not read as one: %j', (data) => {
  const area = fakeArea();
  area.setItem('hot-clutch:visits:a', JSON.stringify({ v: 1, n: 1, data }));
  area.setItem('hot-clutch:visits:slot', 'a');
  expect(visitKeeper(area).read().status).toBe('unreadable');
});
