import { printer } from '../../quantity/print.ts';
import { pressure, temperature, temperatureRise } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { numberControl } from '../../simulation/choices/number.ts';
import type { SimSpec } from '../../simulation/sim-spec.ts';
import { told, withIds, withValues } from '../../simulation/told.ts';
import {
  COLD_PAIR,
  HOT_PAIR,
  MIXED_PAIR,
  pairAt,
  type ProofGivens,
  type ProofModel,
} from './model.ts';
import { saysOf } from './print.ts';
import { REACH } from './brought.ts';
import { words } from './words.en.ts';

const TEMP = { ...REACH, step: 1 };
const SET = { test: 'tap', load: 'idle', rows: '0.1', car: 'a' } as const;

function facts(system: UnitSystem) {
  const print = printer(system);
  const kPa = (value: number | null) => print(value ?? 0, pressure);
  const [cold, hot, warm] = [pairAt(COLD_PAIR), pairAt(HOT_PAIR), pairAt(MIXED_PAIR)];
  return {
    cold: print(COLD_PAIR.after, temperature),
    warm: print(MIXED_PAIR.after, temperature),
    hot: print(HOT_PAIR.after, temperature),
    apart: print(HOT_PAIR.after - MIXED_PAIR.after, temperatureRise),
    coldWas: kPa(cold.before.value),
    coldIs: kPa(cold.after.value),
    coldDoubt: kPa(cold.doubt),
    coldUntouched: kPa(pairAt({ ...COLD_PAIR, car: 'd' }).after.value),
    hotWas: kPa(hot.before.value),
    hotIs: kPa(hot.after.value),
    hotDoubt: kPa(hot.doubt),
    warmIs: kPa(warm.after.value),
    warmHalf: kPa(pairAt({ ...MIXED_PAIR, car: 'b' }).after.value),
    hotHalf: kPa(pairAt({ ...HOT_PAIR, car: 'b' }).after.value),
  };
}
const { options, ...predict } = told(words.predict, facts);
const { outcome } = told({ outcome: words.outcome }, facts);
const { controls } = words;

export const sim: SimSpec<ProofGivens, ProofModel> = {
  id: 'before-and-after',
  title: words.title,
  linkVersion: 1,
  controls: [
    numberControl('before', controls.before, temperature, TEMP),
    numberControl('after', controls.after, temperature, TEMP),
    { kind: 'choice', key: 'test', label: controls.test, options: withValues(words.tests) },
    {
      kind: 'choice',
      key: 'car',
      label: controls.car,
      options: Object.entries(words.cars).map(([value, name]) => ({ value, words: name })),
    },
    { kind: 'choice', key: 'load', label: controls.load, options: withValues(words.loads) },
    {
      kind: 'choice',
      key: 'rows',
      label: controls.rows,
      options: ['0.1', '0.5'].map((value) => ({ value, words: `${value}\u00a0s` })),
    },
  ],
  predict: {
    ...predict,
    options: withIds(options),
    start: { ...SET, ...COLD_PAIR },
    end: HOT_PAIR,
    outcome: ({ state }) => {
      const { car, test, load, rows } = state.value;
      const proving = (
        [
          ['cold', COLD_PAIR],
          ['mixed', MIXED_PAIR],
          ['hot', HOT_PAIR],
        ] as const
      ).filter(([, pair]) => pairAt({ car, test, load, rows, ...pair }).is === 'proves');
      const [only] = proving;
      return { option: proving.length === 1 && only ? only[0] : 'any', words: outcome };
    },
  },
  says: saysOf,
};
