import { SHOP_TESTS, gaugePattern, lacksFriction, reads } from '../../car/shop-tests.ts';
import { printer } from '../../quantity/print.ts';
import { percent, length, pressure } from '../../quantity/quantities.ts';
import type { TaskSpec } from '../../simulation/sim-spec.ts';
import { makeWhichRanges, type RangesGivens, type RangesModel } from './model.ts';

type Task = TaskSpec<RangesGivens, RangesModel>;

const seen: Pick<RangesGivens, 'engaged' | 'test'> = { engaged: 'forward', test: 'hot-load' };
const at = (state: Partial<RangesGivens>) => {
  const model = makeWhichRanges();
  model.apply(state);
  return model;
};

const lineLow: Task = {
  id: 'line-low-always',
  words:
    'Car one: the line reads low in all four columns, cold and hot, idle and load. Yet the cooler gets all it ever did. Which fault makes that pattern?',
  start: { ...seen, fault: 'pumpWear', severity: 70, circuit: 'forward' },
  controls: ['fault', 'severity'],
  done: ({ pattern }) =>
    SHOP_TESTS.every((test) => pattern.value.taps.line[test] !== 'ok') &&
    SHOP_TESTS.every((test) => pattern.value.leftOver[test] === 'ok'),
  hint: 'A leak gets worse hot, and it eats what the cooler lives on. What lowers the line without using up a drop?',
  after: (system) => {
    const print = printer(system);
    const model = at({ fault: 'pressureControl', severity: 70 });
    const [cold, hot] = [model.readings.value['cold-idle'], model.readings.value['hot-idle']];
    return `Pressure control. The line is not starved, it is told to be low: ${print(cold.taps.line, pressure)} cold and ${print(hot.taps.line, pressure)} hot at idle. Nothing leaks, so there is flow to spare. The same reading cold and hot is its mark.`;
  },
};

/** A hole loses nearly as much cold as hot: hot must still have this share of the cold reading. */
const ALIKE = 0.7;
const oneRange: Task = {
  id: 'one-range-always',
  words:
    'Car two: forward alone is low, in all four columns, and hot it reads nearly what it reads cold (seven tenths or more). Reverse, high and the line read right. What makes that pattern?',
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
  hint: 'One range, so a place that only its circuit has. Rings, piston seal or port: which of them leaks like a hole?',
  after: (system) => {
    const print = printer(system);
    const hole = at({ fault: 'openPort', severity: 70, circuit: 'forward' }).readings.value;
    const rings = at({ fault: 'sealingRings', severity: 70, circuit: 'forward' }).readings.value;
    const idle = (of: typeof hole): string =>
      `${print(of['cold-idle'].taps.forward, pressure)} cold and ${print(of['hot-idle'].taps.forward, pressure)} hot`;
    return `A missing plug or check ball. A hole of ${print(2.1, length)} reads ${idle(hole)} at idle. Worn rings are a gap: they read ${idle(rings)}. One range says where to look. Cold against hot says what to look for.`;
  },
};

const worn = at({ fault: 'pumpWear', severity: 50 });
const wornPattern = gaugePattern(worn.pattern.value);
const lookAlike: Task = {
  id: 'look-alike',
  words: (system) =>
    `Set here: a worn pump. Hot at idle the line has ${printer(system)(worn.readings.value['hot-idle'].taps.line, pressure)}; every other gauge reads right. Find another fault that gives these gauges the very same words.`,
  start: { ...seen, fault: 'pumpWear', severity: 50, circuit: 'forward' },
  controls: ['fault', 'severity'],
  done: ({ givens, pattern }) =>
    givens.fault.value !== 'pumpWear' && gaugePattern(pattern.value) === wornPattern,
  hint: 'Something else that eats from the line itself, hot more than cold. It may be less bad than 50 %.',
  after: (system) => {
    const print = printer(system);
    const bore = at({ fault: 'regulatorBore', severity: 40 }).readings.value['hot-idle'].taps.line;
    return `A worn regulator bore does it (${print(bore, pressure)} at 40 %), and so does fluid so low that the pump draws air. Gauges alone cannot tell them apart. So check the level first: it costs nothing. Then look for the test that comes out differently for the two that are left.`;
  },
};

const allRight: Task = {
  id: 'gauges-right',
  words:
    'Car three: it slips when you ask a lot of it, and every gauge reads right, cold and hot. In every range the clutch carries less than it should. Find the fault. The table of torque lies below.',
  start: { ...seen, fault: 'transferSeal', severity: 70, circuit: 'forward' },
  controls: ['fault', 'severity'],
  done: ({ pattern }) =>
    reads(pattern.value, 'line', 'ok', SHOP_TESTS) && lacksFriction(pattern.value),
  hint: 'The pressure is there. What else goes into the torque a clutch holds?',
  after:
    'Worn friction. No gauge sees it, since pressure is only one part of the torque. Good pressure in every range and it still slips: open it up and look at the plates. (The false turbine sensor also leaves every gauge right. But there the clutch carries all it should, and only the code is wrong.)',
};

const rings = at({ fault: 'sealingRings', severity: 50, circuit: 'reverse' });
const byAir: Task = {
  id: 'by-air',
  words: (system) => {
    const print = printer(system);
    const { bench } = rings;
    return `Car four: reverse alone is low when hot. With the valve body off, the tester holds ${print(bench.value.reverse, percent)} of its air on the reverse circuit (on a good one, ${print(bench.value.high, percent)}). On the transfer seal it holds all. Make the air test read so, within one percent.`;
  },
  start: { ...seen, fault: 'transferSeal', severity: 50, circuit: 'forward' },
  controls: ['fault', 'severity', 'circuit'],
  done: ({ bench, pattern }) => {
    const { reverse, forward, high, transferSeal } = bench.value;
    const wanted = rings.bench.value.reverse;
    return (
      Math.abs(reverse - wanted) <= 1 &&
      pattern.value.air.forward === 'ok' &&
      pattern.value.air.high === 'ok' &&
      transferSeal === 100 &&
      forward === high
    );
  },
  hint: 'Air at the case finds rings, piston seal and open ports. Try which of them can leak that much, and in which circuit.',
  after: (system) => {
    const print = printer(system);
    const piston = at({ fault: 'pistonSeal', severity: 100, circuit: 'reverse' }).bench.value
      .reverse;
    return `Rings: they run right round the shaft, so they can lose far more than a cut in the piston seal, which here still holds ${print(piston, percent)} at the worst. And a cold bench is enough. Air is so much thinner than fluid that it finds on a cold part what cold fluid hides.`;
  },
};

export const tasks: readonly Task[] = [lineLow, oneRange, lookAlike, allRight, byAir];
