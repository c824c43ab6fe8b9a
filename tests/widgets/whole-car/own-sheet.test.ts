import { expect, test } from 'vitest';
import { secondTraining } from '../../../src/engine/index.ts';
import { makeModel } from '../../../src/widgets/whole-car/model.ts';
import { says } from '../../../src/widgets/whole-car/story.ts';

test('both cars are built from another transmission, on its own fluid, and say whose numbers they are', () => {
  const model = makeModel();
  const idle = (run: typeof model.cold) => run.value.solved.trace.engineRpm[0] ?? 0;
  const before = idle(model.cold);
  model.own.value = { plant: secondTraining, said: 'From your numbers.' };
  // It idles at 750 in place of 700 rpm, both printed in their sheets.
  expect(idle(model.cold) - before).toBeCloseTo(50, 0);
  expect(idle(model.hot) - before).toBeCloseTo(50, 0);
  expect(says(model, 'si')).toContain('From your numbers.');
  const { turbine } = model.hot.value;
  model.givens.fluid.value = 'standard';
  expect(model.hot.value.turbine).toEqual(turbine);
  model.own.value = null;
  expect(says(model, 'si')).not.toContain('From your numbers.');
  expect(model.hot.value.turbine).not.toEqual(turbine);
});
