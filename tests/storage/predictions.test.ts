import { afterEach, expect, test, vi } from 'vitest';
import { predictedBefore } from '../../src/storage/predicted-before.ts';
import { predictionsKeeper } from '../../src/storage/predictions.ts';
import { fakeArea } from './fake-area.ts';

afterEach(() => vi.unstubAllGlobals());

const said = { option: 'crack', confidence: 'certain' };

test('the last prediction of each simulation is kept', () => {
  const area = fakeArea();
  for (const option of ['hole', 'crack']) {
    predictionsKeeper(area).update(({ bySim }) => ({
      bySim: { ...bySim, fluid: { ...said, option } },
    }));
  }
  predictionsKeeper(area).update(({ bySim }) => ({ bySim: { ...bySim, 'gap-or-hole': said } }));
  expect(predictionsKeeper(area).read().data).toEqual({
    bySim: { fluid: said, 'gap-or-hole': said },
  });
});

test('a page knows whether there is one without opening it', () => {
  const area = fakeArea();
  predictionsKeeper(area).update(() => ({ bySim: { 'gap-or-hole': said } }));
  vi.stubGlobal('localStorage', Object.fromEntries(area.kept));
  expect(predictedBefore('gap-or-hole')).toBe(true);
  expect(predictedBefore('gap')).toBe(false);
  vi.stubGlobal('localStorage', {});
  expect(predictedBefore('gap-or-hole')).toBe(false);
});

test('where the browser keeps nothing, nothing was predicted', () => {
  vi.stubGlobal('localStorage', undefined);
  expect(predictedBefore('fluid')).toBe(false);
});

test.each([
  [null],
  [{}],
  [{ bySim: [] }],
  [{ bySim: { fluid: null } }],
  [{ bySim: { fluid: { option: 'crack' } } }],
  [{ bySim: { fluid: { option: 1, confidence: 'certain' } } }],
])('what is none is not taken for one: %j', (data) => {
  const area = fakeArea();
  area.setItem('hot-clutch:predicted:a', JSON.stringify({ v: 1, n: 1, data }));
  area.setItem('hot-clutch:predicted:slot', 'a');
  expect(predictionsKeeper(area).read()).toEqual({ data: { bySim: {} }, status: 'unreadable' });
});
