import { REFERENCE_CRACK_MM } from '../../car/car.ts';
import { fluidControl } from '../../simulation/choices/fluid-class.ts';
import { numberControl } from '../../simulation/choices/number.ts';
import { COOL_C, HOT_C } from '../../simulation/choices/temperatures.ts';
import { faultControl, severityControl } from '../../simulation/faults/controls.ts';
import { printer } from '../../quantity/print.ts';
import { length, temperature } from '../../quantity/quantities.ts';
import { rangeControl, selectionControl } from '../../simulation/ranges/controls.ts';
import type { SimSpec } from '../../simulation/sim-spec.ts';
import { told, withIds, withValues } from '../../simulation/told.ts';
import { CRACKED, type EngagementGivens, type EngagementModel } from './model.ts';
import { atTheCheck, outcomeOf, says } from './story.ts';
import { words } from './words.en.ts';

const { options, ...predict } = told(words.predict, (s) => ({
  crack: printer(s)(REFERENCE_CRACK_MM, length),
}));
const { controls } = words;

export const sim: SimSpec<EngagementGivens, EngagementModel> = {
  id: 'engagement',
  title: words.title,
  linkVersion: 1,
  controls: [
    numberControl('temp', controls.temp, temperature, { min: -30, max: 140, step: 2 }),
    severityControl('severity'),
    selectionControl('selection'),
    faultControl('fault'),
    {
      kind: 'choice',
      key: 'show',
      label: controls.show,
      as: 'select',
      options: withValues(controls.shown),
    },
    rangeControl('range'),
    {
      kind: 'choice',
      key: 'failSafe',
      label: controls.failSafe,
      options: withValues(controls.failSafes),
    },
    fluidControl('fluid'),
  ],
  predict: {
    ...predict,
    options: withIds(options),
    start: {
      temp: COOL_C,
      fault: 'transferSeal',
      severity: CRACKED,
      selection: 'electronic',
      range: 'drive',
      fluid: 'low-viscosity',
      show: 'turbine',
    },
    end: { temp: HOT_C },
    outcome: ({ hot, givens }) => {
      const { parked, codeStored, solved } = hot.value;
      const slipped = codeStored || solved.stoppedAfter === null;
      return {
        option: parked ? 'park' : slipped ? 'slips' : 'late',
        words: (s) => `${outcomeOf(givens.temp.value, hot.value, s)} ${atTheCheck(hot.value, s)}`,
      };
    },
  },
  says,
};
