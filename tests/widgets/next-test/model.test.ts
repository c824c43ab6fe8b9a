import { expect, test } from 'vitest';
import { testOf, type TakenReading } from '../../../src/diagnosis/index.ts';
import { makeModel } from '../../../src/widgets/next-test/model.ts';

const [one, two, three] = ['line.park.700.hot', 'clutch.high.700.hot', 'fluidCup'].map(
  (id, i): TakenReading => ({ test: testOf(id), value: 100 + i }),
) as [TakenReading, TakenReading, TakenReading];

function withTwo() {
  const model = makeModel();
  model.add(one);
  model.add(two);
  return model;
}

test('a reading that was taken out is named, and comes back where it was', () => {
  const model = withTwo();
  model.remove(0);
  expect(model.readings.value).toEqual([two]);
  expect(model.gone.value?.one).toBe(one);
  model.putBack();
  expect(model.readings.value).toEqual([one, two]);
  expect(model.gone.value).toBeNull();
});

test('so do all of them, where somebody started over', () => {
  const model = withTwo();
  model.clear();
  expect(model.readings.value).toEqual([]);
  expect(model.gone.value).toMatchObject({ one: null });
  model.putBack();
  expect(model.readings.value).toEqual([one, two]);
});

test('not once another reading has been added', () => {
  const model = withTwo();
  model.remove(1);
  model.add(three);
  expect(model.gone.value).toBeNull();
  model.putBack();
  expect(model.readings.value).toEqual([one, three]);
});
