import { expect, test } from 'vitest';
import { progressKeeper } from '../../src/storage/progress.ts';
import { fakeArea } from './fake-area.ts';

const place = (lesson: string, section: { id: string; title: string } | null = null) => ({
  lesson,
  section,
});

test('lessons done are kept, once each, and the place one was at', () => {
  const area = fakeArea();
  const at = place('b', { id: 'wear', title: 'Wear' });
  for (const id of ['a', 'b', 'a']) {
    progressKeeper(area).update(({ done }) => ({ done: [...done, id], last: at }));
  }
  expect(progressKeeper(area).read().data).toEqual({ done: ['a', 'b'], last: at });
});

test.each([
  '{"done":[3],"last":null}',
  '{"done":"a","last":null}',
  '{"done":[],"last":"a"}',
  '{"done":[],"last":{"lesson":3,"section":null}}',
  '{"done":[],"last":{"lesson":"a","section":{"id":"x"}}}',
  '{"done":[],"last":{"lesson":"a"}}',
])('%s is unreadable, not progress', (data) => {
  const area = fakeArea();
  area.kept.set('hot-clutch:progress:a', `{"v":2,"n":1,"data":${data}}`);
  expect(progressKeeper(area).read().status).toBe('unreadable');
});

// As version 1 wrote it, byte for byte. Kept for ever.
test.each([
  [
    '{"v":1,"n":3,"data":{"done":["what-pressure-does"],"last":"hot-fluid-thin-fluid"}}',
    { done: ['what-pressure-does'], last: place('hot-fluid-thin-fluid') },
  ],
  ['{"v":1,"n":1,"data":{"done":[],"last":null}}', { done: [], last: null }],
])('version 1, %s, is read', (text, data) => {
  const area = fakeArea();
  area.kept.set('hot-clutch:progress:a', text);
  expect(progressKeeper(area).read()).toEqual({ data, status: 'ok' });
});
