import { render } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { COLD_C } from '../../../src/car/cold-and-hot.ts';
import { makeModel } from '../../../src/widgets/engagement/model.ts';
import { sim } from '../../../src/widgets/engagement/sim.ts';
import { SpeedTraces } from '../../../src/widgets/engagement/Traces.tsx';

test.each([
  [COLD_C, 1],
  [COLD_C + 2, 2],
])('at %d °C, beside the cold run, so many runs are told and drawn: %d', (temp, runs) => {
  const model = makeModel();
  model.apply({ temp });
  expect(sim.says(model, 'us').match(/the turbine/gu)).toHaveLength(runs);
  const drawn = render(<SpeedTraces model={model} revealed />);
  expect(/>cold</u.test(drawn)).toBe(true);
  expect(/>hot</u.test(drawn)).toBe(runs === 2);
});
