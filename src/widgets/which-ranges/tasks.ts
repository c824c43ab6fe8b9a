import { SHOP_TESTS, gaugePattern, lacksFriction, reads } from '../../car/shop-tests.ts';
import { faultAmount } from '../../engine/index.ts';
import { printer } from '../../quantity/print.ts';
import { length, percent, pressure } from '../../quantity/quantities.ts';
import type { TaskSpec } from '../../simulation/sim-spec.ts';
import { told } from '../../simulation/told.ts';
import { makeModel, type RangesGivens, type RangesModel } from './model.ts';
import { words } from './task-words.en.ts';

const seen: Pick<RangesGivens, 'engaged' | 'test'> = { engaged: 'forward', test: 'hot-load' };
const at = (state: Partial<RangesGivens>): RangesModel => {
  const model = makeModel();
  model.apply(state);
  return model;
};

/** How bad the pump of the look-alike is, and the bore that reads like it [%]. */
const WORN = 50;
const BORE = 40;
const worn = at({ fault: 'pumpWear', severity: WORN });
const wornPattern = gaugePattern(worn.pattern.value);
/** A hole loses nearly as much cold as hot: hot must still have this share of the cold reading. */
const ALIKE = 0.7;

const texts = told(words.tasks, (system) => {
  const print = printer(system);
  const idle = (fault: RangesGivens['fault'], severity: number) => {
    const readings = at({ fault, severity, circuit: 'forward' }).readings.value;
    return { cold: readings['cold-idle'].taps, hot: readings['hot-idle'].taps };
  };
  const control = idle('pressureControl', 70);
  const hole = idle('openPort', 70);
  const leaky = idle('sealingRings', 70);
  return {
    cold: print(control.cold.line, pressure),
    hot: print(control.hot.line, pressure),
    hole: print(faultAmount('openPort', 0.7), length),
    holeCold: print(hole.cold.forward, pressure),
    holeHot: print(hole.hot.forward, pressure),
    ringsCold: print(leaky.cold.forward, pressure),
    ringsHot: print(leaky.hot.forward, pressure),
    wornLine: print(worn.readings.value['hot-idle'].taps.line, pressure),
    half: print(WORN, percent),
    boreLine: print(idle('regulatorBore', BORE).hot.line, pressure),
    boreBad: print(BORE, percent),
  };
});

export const tasks: readonly TaskSpec<RangesGivens, RangesModel>[] = [
  {
    id: 'line-low-always',
    ...texts.lineLow,
    start: { ...seen, fault: 'pumpWear', severity: 70, circuit: 'forward' },
    controls: ['fault', 'severity'],
    done: ({ pattern }) =>
      SHOP_TESTS.every((test) => pattern.value.taps.line[test] !== 'ok') &&
      SHOP_TESTS.every((test) => pattern.value.leftOver[test] === 'ok'),
  },
  {
    id: 'one-range-always',
    ...texts.oneRange,
    start: { ...seen, fault: 'sealingRings', severity: 70, circuit: 'reverse' },
    controls: ['fault', 'severity', 'circuit'],
    done: ({ pattern, readings }) => {
      const now = readings.value;
      const forward = (test: (typeof SHOP_TESTS)[number]): number => now[test].taps.forward;
      return (
        SHOP_TESTS.every((test) => pattern.value.taps.forward[test] !== 'ok') &&
        reads(pattern.value, 'reverse', 'ok', SHOP_TESTS) &&
        reads(pattern.value, 'high', 'ok', SHOP_TESTS) &&
        reads(pattern.value, 'line', 'ok', SHOP_TESTS) &&
        forward('hot-idle') >= ALIKE * forward('cold-idle') &&
        forward('hot-load') >= ALIKE * forward('cold-load')
      );
    },
  },
  {
    id: 'look-alike',
    ...texts.lookAlike,
    start: { ...seen, fault: 'pumpWear', severity: WORN, circuit: 'forward' },
    controls: ['fault', 'severity'],
    done: ({ givens, pattern }) =>
      givens.fault.value !== 'pumpWear' && gaugePattern(pattern.value) === wornPattern,
  },
  {
    id: 'gauges-right',
    ...texts.allRight,
    start: { ...seen, fault: 'transferSeal', severity: 70, circuit: 'forward' },
    controls: ['fault', 'severity'],
    done: ({ pattern }) =>
      reads(pattern.value, 'line', 'ok', SHOP_TESTS) && lacksFriction(pattern.value),
  },
];
