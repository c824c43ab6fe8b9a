import { HOT_C } from '../../car/cold-and-hot.ts';
import { printer } from '../../quantity/print.ts';
import { length, seconds, temperature } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { numberControl } from '../../simulation/choices/number.ts';
import { words as shared } from '../../simulation/choices/words.en.ts';
import type { SimSpec } from '../../simulation/sim-spec.ts';
import { told, withIds, withValues } from '../../simulation/told.ts';
import { makeModel, START, type SealGivens, type SealModel, type Times } from './model.ts';
import { CRACKS, SPAN } from './seals.ts';
import { words } from './words.en.ts';

const end = { temp: HOT_C };
/** So much later than a sound one and a customer notices [s]; our assumption. */
export const NOTICED = 0.3;
/** Nearer than this the two cannot be told apart with a watch [s]. */
export const APART = 0.05;

const printTime = (time: number | null, system: UnitSystem): string =>
  time === null ? '' : printer(system)(time, seconds);

/** What the words of the prediction name. */
function facts(system: UnitSystem) {
  const print = printer(system);
  const model = makeModel();
  const time = (of: keyof Times, tempC: number) => printTime(model.at(tempC)[of], system);
  const alike = model.alike.value ?? START.temp;
  return {
    cold: print(START.temp, temperature),
    hot: print(HOT_C, temperature),
    soundCold: time('sound', START.temp),
    splitCold: time('split', START.temp),
    hardCold: time('hard', START.temp),
    soundHot: time('sound', HOT_C),
    hardHot: time('hard', HOT_C),
    alike: print(alike, temperature),
    both: time('hard', alike),
  };
}
const { options, ...predict } = told(words.predict, facts);
const { outcome } = told({ outcome: words.outcome }, facts);

function verdict({ late }: SealModel): string {
  const { split, hard } = late.value;
  if (split < NOTICED && hard < NOTICED) return words.says.neither;
  if (Math.abs(split - hard) < APART) return words.says.alike;
  return split > hard ? words.says.splitLater : words.says.hardLater;
}

export const sim: SimSpec<SealGivens, SealModel> = {
  id: 'two-seals',
  title: words.title,
  linkVersion: 1,
  controls: [
    numberControl('temp', shared.temperature, temperature, SPAN),
    {
      kind: 'choice',
      key: 'crack',
      label: words.controls.crack,
      as: 'select',
      options: CRACKS.map((value) => ({
        value,
        words: (system) => printer(system)(Number(value), length),
      })),
    },
    {
      kind: 'choice',
      key: 'lip',
      label: words.controls.lip,
      as: 'select',
      options: withValues(words.controls.lips),
    },
  ],
  predict: {
    ...predict,
    options: withIds(options),
    start: START,
    end,
    runMs: 4000,
    outcome: ({ late }) => ({
      option: late.value.hard < APART ? 'right' : late.value.hard < NOTICED ? 'some' : 'worse',
      words: outcome,
    }),
  },
  says: (model, system) => {
    const { sound, split, hard } = model.now.value;
    const told = {
      temp: printer(system)(model.givens.temp.value, temperature),
      sound: printTime(sound, system),
      hard: printTime(hard, system),
    };
    const times =
      split === null
        ? words.says.given(told)
        : words.says.times({ ...told, split: printTime(split, system) });
    return `${times} ${verdict(model)}`;
  },
};
