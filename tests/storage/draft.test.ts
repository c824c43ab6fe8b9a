import { expect, test } from 'vitest';
import { draftKeeper, type Draft } from '../../src/storage/draft.ts';
import { fakeArea } from './fake-area.ts';

const draft: Draft = {
  item: 'q',
  seed: 7,
  given: { kind: 'typed', text: '58', system: 'us' },
  certainty: null,
};

test.each([
  [draft],
  [{ ...draft, given: { kind: 'chosen', ids: ['a', 'b'] }, certainty: 3 } as const],
  [null],
])('what stands in a form comes back: %j', (one) => {
  const area = fakeArea();
  draftKeeper(area).update(() => ({ draft: one }));
  expect(draftKeeper(area).read()).toEqual({ data: { draft: one }, status: 'ok' });
});

test.each([
  [null],
  [{}],
  [{ draft: 'q' }],
  [{ draft: { ...draft, item: 1 } }],
  [{ draft: { ...draft, seed: null } }],
  [{ draft: { ...draft, certainty: 4 } }],
  [{ draft: { ...draft, given: { kind: 'chosen', ids: [1] } } }],
  [{ draft: { ...draft, given: { kind: 'typed', text: '58', system: 'both' } } }],
])('what is none is not taken for one: %j', (data) => {
  const area = fakeArea();
  area.setItem('hot-clutch:draft:a', JSON.stringify({ v: 1, n: 1, data }));
  area.setItem('hot-clutch:draft:slot', 'a');
  expect(draftKeeper(area).read()).toEqual({ data: { draft: null }, status: 'unreadable' });
});
