import { expect, it } from 'vitest';
import { COLD_C, HOT_C } from '../../../src/car/cold-and-hot.ts';
import { bringOpening, makeModel, OPENING } from '../../../src/widgets/whole-car/model.ts';
import { openingText } from '../../../src/widgets/whole-car/opening.ts';
import { pictured } from '../../../src/widgets/whole-car/story.ts';

// No answer key: what the page brings is held against the same solver asked anew.
it('draws both cars from what comes with the page as from the whole of both runs', () => {
  bringOpening(openingText());
  const model = makeModel();
  model.apply(OPENING);
  const { opening, cold, hot } = model;
  const brought = opening;
  if (!brought) throw new Error('Nothing was brought.');
  for (const system of ['si', 'us'] as const) {
    expect(pictured(model, brought.cold, COLD_C, system)).toEqual(
      pictured(model, cold.value, COLD_C, system),
    );
    expect(pictured(model, brought.hot, HOT_C, system)).toEqual(
      pictured(model, hot.value, HOT_C, system),
    );
  }
  expect(brought.hot.turbine).toEqual(hot.value.turbine.slice(0, 1));
});
