import { signal } from '@preact/signals';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { decodeTable, plannerOf, testOf, type TakenReading } from '../../src/diagnosis/index.ts';
import { keptTable } from '../../src/diagnosis/kept-table.ts';
import { inSlices } from '../../src/planner/in-slices.ts';
import { makePlanner } from '../../src/planner/model.ts';

const planner = plannerOf(decodeTable(keptTable));
const low: TakenReading = { test: testOf('clutch.forward.700.hot'), value: 170 };

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

/** A planner that ranks in slices, and one that does so at once. */
function both() {
  const readings = signal<readonly TakenReading[]>([]);
  const [sliced, whole] = [makePlanner(readings, inSlices), makePlanner(readings)];
  sliced.planner.value = planner;
  whole.planner.value = planner;
  return { readings, sliced, whole };
}
const ids = (model: ReturnType<typeof makePlanner>) =>
  model.advice.value?.next.map(({ test, bits, minutes }) => [test.id, bits, minutes]);

test('the list of causes is there at once, the tests a little later, and the same as in one go', () => {
  const { sliced, whole } = both();
  expect(sliced.advice.value?.faults).toEqual(whole.advice.value?.faults);
  expect(sliced.ranking.value).toBe(true);
  expect(ids(sliced)).toEqual([]);
  vi.runAllTimers();
  expect(sliced.ranking.value).toBe(false);
  expect(ids(sliced)).toEqual(ids(whole));
  expect(whole.ranking.value).toBe(false);
});

test('a reading that comes meanwhile stops it, and the tests are those after it', () => {
  const { readings, sliced, whole } = both();
  vi.advanceTimersToNextTimer();
  readings.value = [low];
  expect(sliced.ranking.value).toBe(true);
  vi.runAllTimers();
  expect(ids(sliced)).toEqual(ids(whole));
  expect(ids(sliced)?.some(([id]) => id === low.test.id)).toBe(false);
});

test('a page that goes away takes its timer with it', () => {
  const { sliced } = both();
  sliced.stopRanking();
  expect(vi.getTimerCount()).toBe(0);
});
