import type { DriveKind } from '../../engine/index.ts';
import { printer } from '../../quantity/print.ts';
import { length, minutes, temperature, temperatureRise } from '../../quantity/quantities.ts';
import { crackControl, numberControl } from '../../simulation/choices/number.ts';
import { requiredControl } from '../../simulation/required/control.ts';
import type { ChoiceSpec, SimSpec } from '../../simulation/sim-spec.ts';
import { told, withIds, withValues } from '../../simulation/told.ts';
import {
  ABOVE,
  makeModel,
  MINUTES,
  OUTSIDE,
  START,
  type WarmUpGivens,
  type WarmUpModel,
} from './model.ts';
import { says, spoken } from './says.ts';
import { words } from './words.en.ts';

const { controls } = words;
const kindOptions = withValues<{ words: string }>({
  idling: { words: controls.options.idling },
  gentle: { words: controls.options.gentle },
  pulling: { words: controls.options.pulling },
} satisfies Record<DriveKind, { words: string }>);
const kindControl = (key: keyof typeof controls.kinds): ChoiceSpec<WarmUpGivens> => ({
  kind: 'choice',
  key,
  label: controls.kinds[key],
  options: kindOptions,
});
const lasting = (key: keyof typeof controls.minutes) =>
  numberControl(key, controls.minutes[key], minutes, MINUTES, (value) =>
    value === 0 ? controls.leftOut : '',
  );

/** How long the drive of the prediction is [min], and how much more "a little more" would be. */
const DRIVEN = 10;
const MORE = 5;
const start: WarmUpGivens = { ...START, minutes1: 0, minutes2: 0, minutes3: 0 };
const end = { minutes1: DRIVEN };

/** The model at a state, for the numbers in the words. */
export function at(state: Partial<WarmUpGivens>): WarmUpModel {
  const model = makeModel();
  model.apply({ ...START, ...state });
  return model;
}
/** Where the crack lets go [°C]; the words rely on there being such a temperature. */
export function goesAt({ letsGo }: WarmUpModel): number {
  const lets = letsGo.value;
  return lets.kind === 'at' ? lets.tempC : Number.NaN;
}
/** After how many minutes it shows; null where it does not on this drive. */
export function minuteOf({ shows }: WarmUpModel): number | null {
  const found = shows.value;
  return found.when === 'at' ? found.minute : null;
}

const driven = at({ ...start, ...end });
const { options, ...predict } = told(words.predict, (system) => {
  const print = printer(system);
  return {
    crack: print(START.crack, length),
    goesAt: print(goesAt(driven), temperature),
    outside: print(START.outside, temperature),
    minutes: spoken(DRIVEN),
    got: print(driven.end.value.tempC, temperature),
    needs: spoken(minuteOf(at({})) ?? Number.NaN),
  };
});

export const sim: SimSpec<WarmUpGivens, WarmUpModel> = {
  id: 'warm-up',
  title: words.title,
  linkVersion: 1,
  controls: [
    numberControl('outside', controls.outside, temperature, OUTSIDE),
    crackControl('crack'),
    kindControl('kind1'),
    lasting('minutes1'),
    kindControl('kind2'),
    lasting('minutes2'),
    kindControl('kind3'),
    lasting('minutes3'),
    numberControl('above', controls.above, temperatureRise, ABOVE, (value) =>
      value === 0 ? controls.overnight : controls.warm,
    ),
    requiredControl('required'),
  ],
  predict: {
    ...predict,
    options: withIds(options),
    start,
    end,
    outcome: (model) => {
      const later = at({ ...start, minutes1: DRIVEN + MORE });
      const { tempC, minute } = model.end.value;
      return {
        option: minuteOf(model) !== null ? 'shows' : minuteOf(later) !== null ? 'close' : 'far',
        words: (system) => {
          const print = printer(system);
          return words.outcome({
            got: print(tempC, temperature),
            minutes: spoken(minute),
            goesAt: print(goesAt(driven), temperature),
          });
        },
      };
    },
  },
  says,
};
