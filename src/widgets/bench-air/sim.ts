import { AIR_POINTS } from '../../car/shop-tests.ts';
import { CIRCUITS } from '../../engine/index.ts';
import { printer } from '../../quantity/print.ts';
import { length, percent, pressure } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { numberControl } from '../../simulation/choices/number.ts';
import type { SimSpec } from '../../simulation/sim-spec.ts';
import { told, withIds } from '../../simulation/told.ts';
import { makeModel, START, type BenchAirGivens, type BenchAirModel } from './model.ts';
import { saysOf } from './says.ts';
import { FINDINGS, UNITS } from './units.ts';
import { words } from './words.en.ts';

const start = { ...START, wet: false } as const;
const end = { wet: true } as const;
const SUPPLY = { min: 70, max: 620, step: 5 };
const HOLE = { min: 0.5, max: 3, step: 0.1 };

/** The model at a state, for the numbers that the words name. */
export function at(state: Partial<BenchAirGivens>): BenchAirModel {
  const model = makeModel();
  model.apply(state);
  return model;
}
function facts(system: UnitSystem) {
  const print = printer(system);
  const wet = at({ ...start, ...end });
  return {
    dry: print(at(start).here.value.held, percent),
    wet: print(wet.here.value.held, percent),
    sister: print(wet.beside.value?.held ?? 0, percent),
  };
}
const { options, ...predict } = told(words.predict, facts);
const { outcome } = told({ outcome: words.outcome }, facts);
const { controls } = words;

export const sim: SimSpec<BenchAirGivens, BenchAirModel> = {
  id: 'bench-air',
  title: words.title,
  linkVersion: 1,
  controls: [
    {
      kind: 'choice',
      key: 'unit',
      label: controls.unit,
      as: 'select',
      options: UNITS.map((_unit, i) => ({
        value: String(i + 1),
        words: words.unit({ number: String(i + 1), complaint: words.complaints[i] ?? '' }),
      })),
    },
    {
      kind: 'choice',
      key: 'target',
      label: controls.target,
      as: 'select',
      options: [...CIRCUITS, 'transferSeal' as const].map((value) => ({
        value,
        words: words.places[value],
      })),
    },
    {
      kind: 'choice',
      key: 'named',
      label: controls.named,
      as: 'select',
      options: (['unsaid', ...FINDINGS] as const).map((value) => ({
        value,
        words: words.findings[value],
      })),
    },
    {
      kind: 'flag',
      key: 'wet',
      label: controls.wet,
      on: controls.wetOn,
      off: controls.wetOff,
    },
    numberControl('supply', controls.supply, pressure, SUPPLY),
    numberControl('hole', controls.hole, length, HOLE),
  ],
  predict: {
    ...predict,
    options: withIds(options),
    start,
    end,
    runMs: 600,
    outcome: ({ here, beside }) => {
      const { held } = here.value;
      const sister = beside.value?.held ?? 0;
      const dry = at(start).here.value.held;
      const option =
        held < dry + AIR_POINTS ? 'same' : held < sister - AIR_POINTS ? 'half' : 'sister';
      return { option, words: outcome };
    },
  },
  says: saysOf,
};
