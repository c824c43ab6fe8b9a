import { expect, test } from 'vitest';
import {
  pastKeeper,
  underWayKeeper,
  withPast,
  type Past,
  type Rehearsal,
} from '../../src/storage/rehearsals.ts';
import { fakeArea } from './fake-area.ts';
import kept from './rehearsals-version-1.json' with { type: 'json' };

const [one] = kept.past.data.rehearsals as unknown as readonly [Rehearsal];

test('what version 1 wrote is read', () => {
  const area = fakeArea();
  area.setItem('hot-clutch:rehearsal:a', JSON.stringify(kept.underWay));
  area.setItem('hot-clutch:rehearsals-past:a', JSON.stringify(kept.past));
  expect(underWayKeeper(area).read()).toEqual({ data: kept.underWay.data, status: 'ok' });
  expect(pastKeeper(area).read()).toEqual({ data: kept.past.data, status: 'ok' });
});

test('at first nothing is under way and nothing is past', () => {
  expect(underWayKeeper(fakeArea()).read().data).toEqual({ rehearsal: null });
  expect(pastKeeper(fakeArea()).read().data).toEqual({ rehearsals: [] });
});

test('what is kept comes back', () => {
  const area = fakeArea();
  underWayKeeper(area).update(() => ({ rehearsal: one }));
  expect(underWayKeeper(area).read()).toEqual({ data: { rehearsal: one }, status: 'ok' });
  pastKeeper(area).update((now) => withPast(now, one));
  expect(pastKeeper(area).read().data).toEqual({ rehearsals: [one] });
});

test('past ones stand the latest first, each once, and the oldest go where there are too many', () => {
  let past: Past = { rehearsals: [] };
  for (let begun = 1; begun <= 25; begun += 1) past = withPast(past, { ...one, begun });
  past = withPast(past, { ...one, begun: 24, logged: true });
  expect(past.rehearsals.map(({ begun }) => begun)).toEqual(
    Array.from({ length: 20 }, (_, i) => 25 - i),
  );
  expect(past.rehearsals[1]?.logged).toBe(true);
});

const item = { id: 'a', lesson: 'l', area: 'fluid' };
const good = { ...one, items: [item] };
test.each([
  null,
  'none',
  { ...good, begun: 'today' },
  { ...good, ended: 'today' },
  { ...good, seconds: -1 },
  { ...good, timed: 1 },
  { ...good, logged: undefined },
  { ...good, place: 1 },
  { ...good, place: 0.5 },
  { ...good, items: [] },
  { ...good, items: [null] },
  { ...good, items: [{ ...item, id: '' }] },
  { ...good, items: [{ ...item, given: { kind: 'chosen' } }] },
  { ...good, items: [{ ...item, given: { kind: 'typed', text: '5', system: 'cgs' } }] },
  { ...good, items: [{ ...item, given: { kind: 'sung', text: '5' } }] },
  { ...good, items: [{ ...item, certainty: 4 }] },
  { ...good, items: [{ ...item, flagged: 'yes' }] },
  { ...good, items: [{ ...item, result: 'nearly' }] },
])('what is no rehearsal is not read as one: %j', (rehearsal) => {
  const area = fakeArea();
  const write = (name: string, data: unknown): void => {
    area.setItem(`hot-clutch:${name}:a`, JSON.stringify({ v: 1, n: 1, data }));
  };
  if (rehearsal !== null) {
    write('rehearsal', { rehearsal });
    expect(underWayKeeper(area).read().status).toBe('unreadable');
  }
  write('rehearsals-past', { rehearsals: [one, rehearsal] });
  expect(pastKeeper(area).read().status).toBe('unreadable');
});
