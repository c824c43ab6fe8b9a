import { PRINTED_CEILINGS } from '../../car/air-bench.ts';
import { printer } from '../../quantity/print.ts';
import { length, percent, pressure } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { judged } from '../../simulation/judged.ts';
import type { TaskSpec } from '../../simulation/sim-spec.ts';
import { told } from '../../simulation/told.ts';
import { START, type BenchAirGivens, type BenchAirModel } from './model.ts';
import { at } from './sim.ts';
import { words } from './task-words.en.ts';
import { words as bench } from './words.en.ts';

/** 60 psi [kPa]. */
const LEFT_AT = 413.7;
const WIDE = 3;
/** 30 and 40 psi, with what a dial cannot show [kPa]. */
const SUPPLY = { low: 206.8, high: 275.8, slack: 2 };
/** What tells good from bad [%]. */
const SOUND = 85;
const WORN = SOUND / 6;

const rig = { ...START, unit: '2', target: 'reverse', supply: LEFT_AT, hole: WIDE } as const;
const name = { ...START, unit: '4', target: 'high', wet: false } as const;
const nothing = { ...START, unit: '5' } as const;

const heldBy = (model: BenchAirModel, system: UnitSystem) => {
  const print = printer(system);
  return {
    held: print(model.here.value.held, percent),
    sister: print(model.beside.value?.held ?? 0, percent),
  };
};

const texts = told(words.tasks, (system) => {
  const print = printer(system);
  const right = heldBy(at({ ...rig, supply: START.supply, hole: START.hole }), system);
  const dry = heldBy(at(name), system);
  const wet = heldBy(at({ ...name, wet: true }), system);
  const clear = heldBy(at(nothing), system);
  return {
    supply: print(LEFT_AT, pressure),
    hole: print(WIDE, length),
    from: print(SUPPLY.low, pressure),
    to: print(SUPPLY.high, pressure),
    good: print(SOUND, percent),
    wide: heldBy(at({ ...rig, supply: START.supply }), system).held,
    usual: print(START.hole, length),
    leaks: right.held,
    sound: right.sister,
    dry: dry.held,
    sisterDry: dry.sister,
    wet: wet.held,
    sisterWet: wet.sister,
    ...clear,
  };
});
const { reached } = words;

export const tasks: readonly TaskSpec<BenchAirGivens, BenchAirModel>[] = [
  {
    id: 'set-up-the-rig',
    ...texts.rig,
    start: rig,
    controls: ['supply', 'hole', 'target'],
    ...judged((model) => {
      const { supply, target } = model.givens;
      const sound = model.at('forward').held;
      const worn = model.at('reverse').held;
      const atSupply = (system: UnitSystem) =>
        reached.supply({ supply: printer(system)(supply.value, pressure) });
      if (model.shut.value) {
        return {
          is: 'too-high',
          reached: (system) =>
            reached.ceiling({
              supply: printer(system)(supply.value, pressure),
              low: printer(system)(PRINTED_CEILINGS.low, pressure),
            }),
        };
      }
      if (supply.value > SUPPLY.high + SUPPLY.slack) return { is: 'too-high', reached: atSupply };
      if (supply.value < SUPPLY.low - SUPPLY.slack) return { is: 'too-low', reached: atSupply };
      if (target.value === 'transferSeal') return null;
      return {
        is: worn > WORN ? 'too-high' : sound < SOUND ? 'too-low' : 'done',
        reached: (system) => {
          const print = printer(system);
          return reached.rig({ worn: print(worn, percent), sound: print(sound, percent) });
        },
      };
    }),
  },
  {
    id: 'name-the-part',
    ...texts.name,
    start: name,
    controls: ['wet', 'target', 'named'],
    ...judged((model) => {
      const { wet, target, named } = model.givens;
      if (named.value === 'unsaid') return null;
      const { finding, at: place } = model.unit.value;
      const { most } = model.at(place);
      if (!wet.value)
        return {
          is: 'nearly',
          reached: (system) => reached.dry(heldBy(model, system)),
        };
      if (named.value !== finding)
        return {
          is: 'not-that',
          reached: reached.elsewhere({ where: bench.where[most ?? 'rings'] }),
        };
      return { is: target.value === place ? 'done' : 'nearly', reached: reached.place };
    }),
  },
  {
    id: 'air-finds-nothing',
    ...texts.nothing,
    start: nothing,
    controls: ['target', 'wet', 'named'],
    ...judged((model) => {
      const named = model.givens.named.value;
      if (named === 'unsaid') return null;
      return {
        is: named === 'nothing' ? 'done' : 'not-that',
        reached: (system) => reached.alike(heldBy(at(nothing), system)),
      };
    }),
  },
];
