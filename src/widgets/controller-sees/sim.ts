import { RECORDING_IDS } from '../../car/recordings.ts';
import { printer } from '../../quantity/print.ts';
import { seconds, speed } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { numberControl } from '../../simulation/choices/number.ts';
import type { SimSpec } from '../../simulation/sim-spec.ts';
import { told, withIds } from '../../simulation/told.ts';
import { makeModel, START, type SeesGivens, type SeesModel } from './model.ts';
import { alarmsOf, crackOf, nameOf, score, verdictOf } from './print.ts';
import { words } from './words.en.ts';

const TIME = { min: 0.05, max: 2, step: 0.05 };
const LOOK = { min: 0.3, max: 2.4, step: 0.05 };
const SENSOR = { min: 0, max: 300, step: 5 };
const { controls, predict } = words;

/** The numbers that the explanations name: at the usual limits, and at the end of the run. */
const end = { slipTime: START.slipTime / 2, recording: 'hurry' } as const;
const before = makeModel();
const after = makeModel();
after.apply(end);
const facts = (system: UnitSystem) => {
  const print = printer(system);
  const codeIn = (model: SeesModel) => model.of('crack25').codeAfter ?? 0;
  return {
    slipped: print(after.of('hurry').longestOver, seconds),
    crack: crackOf('crack25', system),
    gained: print(codeIn(before) - codeIn(after), seconds),
    slowest: print(after.healthyWorst.value.slowest, seconds),
  };
};

export const sim: SimSpec<SeesGivens, SeesModel> = {
  id: 'controller-sees',
  title: words.title,
  linkVersion: 1,
  controls: [
    numberControl('slipLimit', controls.slipLimit, speed, { min: 20, max: 1000, step: 10 }),
    numberControl('slipTime', controls.slipTime, seconds, TIME),
    {
      kind: 'choice',
      key: 'recording',
      label: controls.recording,
      as: 'select',
      options: RECORDING_IDS.map((id) => ({ value: id, words: (s) => nameOf(id, s) })),
    },
    numberControl('engagementTime', controls.engagementTime, seconds, LOOK),
    numberControl('engagementLimit', controls.engagementLimit, speed, {
      min: 20,
      max: 800,
      step: 10,
    }),
    numberControl('noise', controls.noise, speed, SENSOR, (value) =>
      value === 0 ? controls.noNoise : controls.eitherWay,
    ),
    numberControl('resolution', controls.resolution, speed, SENSOR, (value) =>
      value === 0 ? controls.exact : '',
    ),
  ],
  predict: {
    question: (s) => predict.question({ wait: printer(s)(START.slipTime, seconds) }),
    options: withIds(told(predict.options, facts)),
    start: START,
    end,
    runLabel: predict.runLabel,
    outcome: (model) => {
      const alarms = model.falseAlarms.value;
      const option = alarms.includes('frost') ? 'frost' : alarms.length > 0 ? 'hurry' : 'nothing';
      return { option, words: (s) => alarmsOf(model, s) };
    },
  },
  says: (model, s) => `${verdictOf(model.shown.value, s)} ${score(model, s)}`,
};
