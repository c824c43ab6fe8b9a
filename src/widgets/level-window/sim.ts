import { COLD_C, HOT_C } from '../../car/cold-and-hot.ts';
import { GEARS_MM, MARK_MM, PLACES } from '../../car/pan.ts';
import { dimension, fluidVolume } from '../../quantity/part-quantities.ts';
import { printer } from '../../quantity/print.ts';
import { speed, temperature } from '../../quantity/quantities.ts';
import { numberControl, temperatureControl } from '../../simulation/choices/number.ts';
import type { SimSpec } from '../../simulation/sim-spec.ts';
import { told, withIds } from '../../simulation/told.ts';
import { IDLE_RPM, levelAt, type LevelGivens, type LevelModel } from './model.ts';
import { airWords, lineWords, stickWords } from './print.ts';
import { words } from './words.en.ts';

/** Reach of the level [L]. */
export const OFF = { min: -3, max: 1, step: 0.1 };
const SPEED = { min: 600, max: 3000, step: 100 };
/** A right fill, topped up cold to MAX [L]. */
export const TOPPED_UP = 0.6;

const start: LevelGivens = { off: TOPPED_UP, temp: COLD_C, rpm: IDLE_RPM, place: 'flat' };
const end = { temp: HOT_C };

const { options, ...predict } = told(words.predict, (system) => {
  const print = printer(system);
  return {
    cold: print(COLD_C, temperature),
    hot: print(HOT_C, temperature),
    added: print(TOPPED_UP, fluidVolume),
    before: print(-levelAt({ temp: COLD_C }).stickMm, dimension),
    after: print(levelAt({ ...start, ...end }).stickMm, dimension),
  };
});
const { controls } = words;

export const sim: SimSpec<LevelGivens, LevelModel> = {
  id: 'level-window',
  title: words.title,
  linkVersion: 1,
  controls: [
    temperatureControl('temp'),
    numberControl('off', controls.off, fluidVolume, OFF, (litres) =>
      litres < 0 ? words.off.low : litres > 0 ? words.off.high : words.off.right,
    ),
    numberControl('rpm', controls.rpm, speed, SPEED),
    {
      kind: 'choice',
      key: 'place',
      label: controls.place,
      options: PLACES.map((value) => ({ value, words: words.places[value] })),
    },
  ],
  predict: {
    ...predict,
    options: withIds(options),
    start,
    end,
    outcome: ({ level }) => {
      const { stickMm, middleMm } = level.value;
      const option =
        middleMm > GEARS_MM && stickMm > MARK_MM + 2
          ? 'over'
          : stickMm < MARK_MM - 2
            ? 'lower'
            : 'same';
      return {
        option,
        words: (system) => {
          const print = printer(system);
          return words.outcome({
            cold: print(COLD_C, temperature),
            hot: print(HOT_C, temperature),
            added: print(TOPPED_UP, fluidVolume),
            before: print(-levelAt({ temp: COLD_C }).stickMm, dimension),
            after: print(stickMm, dimension),
          });
        },
      };
    },
  },
  says: (model, system) =>
    [
      stickWords(model, system),
      airWords(model.pickUp.value.air),
      ...(model.level.value.gearsDip ? [words.gears] : []),
      lineWords(model, system),
    ].join(' '),
};
