import { expect, test } from 'vitest';
import { progressKeeper } from '../../src/storage/progress.ts';
import { fakeArea } from './fake-area.ts';

test('lessons done are kept, once each', () => {
  const area = fakeArea();
  for (const id of ['a', 'b', 'a']) {
    progressKeeper(area).update(({ done }) => ({ done: [...done, id], last: id }));
  }
  expect(progressKeeper(area).read().data).toEqual({ done: ['a', 'b'], last: 'a' });
});

test('a list of something else is unreadable, not progress', () => {
  const area = fakeArea();
  area.kept.set('hot-clutch:progress:a', '{"v":1,"n":1,"data":{"done":[3],"last":null}}');
  expect(progressKeeper(area).read().status).toBe('unreadable');
});
