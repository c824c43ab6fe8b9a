import { REFERENCE_CRACK_MM } from '../../car/car.ts';
import { printer } from '../../quantity/print.ts';
import { length, seconds, temperature } from '../../quantity/quantities.ts';
import { fluidControl } from '../../simulation/choices/fluid-class.ts';
import { numberControl } from '../../simulation/choices/number.ts';
import { coolAndHot } from '../../simulation/choices/temperatures.ts';
import { faultControl, severityControl } from '../../simulation/faults/controls.ts';
import { rangeControl, selectionControl } from '../../simulation/ranges/controls.ts';
import type { SimSpec } from '../../simulation/sim-spec.ts';
import { told, withIds } from '../../simulation/told.ts';
import { END, OPENING, type WholeCarGivens, type WholeCarModel } from './model.ts';
import { outcome, says } from './story.ts';
import { words } from './words.en.ts';

const { options, ...predict } = told(words.predict, (s) => {
  const { cool, hot } = coolAndHot(s);
  return { crack: printer(s)(REFERENCE_CRACK_MM, length), cold: cool, hot };
});
const { controls } = words;

export const sim: SimSpec<WholeCarGivens, WholeCarModel> = {
  id: 'whole-car',
  title: words.title,
  linkVersion: 1,
  controls: [
    faultControl('fault', controls.fault),
    numberControl('temp', controls.temp, temperature, { min: -30, max: 140, step: 2 }),
    // The trace and the player, which are always in sight, move it too.
    numberControl('time', controls.time, seconds, { min: 0, max: END, step: 0.05 }),
    severityControl('severity'),
    selectionControl('selection'),
    rangeControl('range'),
    fluidControl('fluid'),
  ],
  predict: {
    ...predict,
    options: withIds(options),
    start: OPENING,
    end: { time: 5 },
    // As long as it takes: this is the story in its own time.
    runMs: 5000,
    outcome,
  },
  says,
};
