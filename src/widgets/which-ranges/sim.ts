import { COLD_TESTS, HOT_TESTS, reads, SHOP_TESTS } from '../../car/shop-tests.ts';
import { words as names } from '../../car/words.en.ts';
import { CIRCUITS, faultAmount, type Circuit } from '../../engine/index.ts';
import { hairs } from '../../quantity/hairs/hairs.ts';
import { printer } from '../../quantity/print.ts';
import { length, pressure } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { faultControl, severityControl } from '../../simulation/faults/controls.ts';
import type { SimSpec } from '../../simulation/sim-spec.ts';
import { told, withIds } from '../../simulation/told.ts';
import { makeModel, type RangesGivens, type RangesModel } from './model.ts';
import { says } from './says.ts';
import { words } from './words.en.ts';

const start: RangesGivens = {
  fault: 'transferSeal',
  severity: 0,
  circuit: 'forward',
  engaged: 'forward',
  test: 'hot-load',
};
/** Two hairs: a crack with which cold still reads right and hot does not. */
const end = { severity: 40 };
const crackMm = faultAmount('transferSeal', end.severity / 100);

const readingsAt = (state: Partial<RangesGivens>) => {
  const model = makeModel();
  model.apply({ ...start, ...state });
  return model.readings.value;
};
const healthy = readingsAt({});
const split = readingsAt(end);

/** The four gauges hot under load. */
function hotUnderLoad(readings: typeof split, system: UnitSystem) {
  const print = printer(system);
  const { line, forward, reverse, high } = readings['hot-load'].taps;
  return {
    line: print(line, pressure),
    forward: print(forward, pressure),
    reverse: print(reverse, pressure),
    high: print(high, pressure),
  };
}
const { options, ...predict } = told(words.predict, (system) => {
  const print = printer(system);
  return {
    ...hotUnderLoad(split, system),
    crack: print(crackMm, length),
    hairs: hairs(crackMm),
    coldForward: print(split['cold-load'].taps.forward, pressure),
    coldHealthy: print(healthy['cold-load'].taps.forward, pressure),
    hotHealthy: print(healthy['hot-load'].taps.forward, pressure),
    reverseHealthy: print(healthy['hot-load'].taps.reverse, pressure),
  };
});

const { controls } = words;
const ranges = CIRCUITS.map((value) => ({ value, words: names.circuits[value] }));

export const sim: SimSpec<RangesGivens, RangesModel> = {
  id: 'which-ranges',
  title: words.title,
  linkVersion: 1,
  controls: [
    faultControl('fault'),
    severityControl('severity'),
    { kind: 'choice', key: 'circuit', label: controls.circuit, options: ranges },
    { kind: 'choice', key: 'engaged', label: controls.engaged, options: ranges },
    {
      kind: 'choice',
      key: 'test',
      label: controls.test,
      options: SHOP_TESTS.map((value) => ({ value, words: names.shopTests[value] })),
    },
  ],
  predict: {
    ...predict,
    options: withIds(options),
    start,
    end,
    outcome: ({ pattern, readings }) => {
      const now = pattern.value;
      const down = (tap: Circuit, tests: typeof HOT_TESTS): boolean =>
        !reads(now, tap, 'ok', tests);
      const both = down('forward', HOT_TESTS) && down('reverse', HOT_TESTS);
      const option = down('high', HOT_TESTS)
        ? 'all-three'
        : !both
          ? 'forward'
          : down('forward', COLD_TESTS)
            ? 'both-always'
            : 'both-hot';
      const found = readings.value;
      return { option, words: (system) => words.outcome(hotUnderLoad(found, system)) };
    },
  },
  says,
};
