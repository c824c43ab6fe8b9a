// What notes and answers of the meetings say of the training transmission without printing a number, held against the engine.
import { expect, test } from 'vitest';
import { makeCar, oneFault, readingOf, type Car } from '../../src/car/index.ts';
import { bringCars } from '../../src/widgets/gauge-bench/cars.ts';
import { bit, EMPTY, makeModel as gaugeBench } from '../../src/widgets/gauge-bench/model.ts';
import type { Place } from '../../src/widgets/gauge-bench/places.ts';
import { solveCars } from '../../src/widgets/gauge-bench/solve-cars.ts';
import { makeModel as whoGoesHungry } from '../../src/widgets/who-goes-hungry/model.ts';

const [COLD_IDLE, HOT_IDLE, HOT_FAST] = [0, 2, 3];

bringCars(solveCars());
/** Names that fit car 1 of the gauge bench with this on its sheet. */
function left(sheet: Partial<Record<Place, number>>): readonly string[] {
  const model = gaugeBench();
  model.apply({ ...EMPTY, car: '1', named: 'none', ...sheet });
  return model.fits.value;
}

test('the pressure pair that decides: cold leaves two, revs four, the line five', () => {
  const one = left({ forward: bit(HOT_IDLE) });
  expect(one).toContain('pumpWear');
  expect(one.length / 15).toBeGreaterThan(0.4);
  expect(one.length / 15).toBeLessThan(0.6);
  expect([...left({ forward: bit(COLD_IDLE, HOT_IDLE) })].sort()).toEqual([
    'openPort',
    'pressureControl',
  ]);
  // What the wrong answers say that their reading takes off, and what it leaves.
  const revs = ['openPort', 'pistonSeal', 'pressureControl', 'transferSeal'];
  expect([...left({ forward: bit(HOT_IDLE, HOT_FAST) })].sort()).toEqual(revs);
  const behind = ['clutchControl', 'feedRestriction', 'openPort', 'pistonSeal', 'transferSeal'];
  expect([...left({ forward: bit(HOT_IDLE), lineDrive: bit(HOT_IDLE) })].sort()).toEqual(behind);
  expect(one.filter((name) => !behind.includes(name)).sort()).toEqual([
    'pressureControl',
    'pumpWear',
    'regulatorBore',
  ]);
});

test('the pressure pair that decides: a third at the tap adds nothing, the line decides', () => {
  const third = bit(COLD_IDLE, HOT_IDLE, HOT_FAST);
  expect(left({ forward: third })).toEqual(left({ forward: bit(COLD_IDLE, HOT_IDLE) }));
  expect(left({ forward: third, lineDrive: bit(HOT_IDLE) })).toEqual(['openPort']);
});

test('filters and cold starts: the line is right, no more comes with revs, and hot all of it comes', () => {
  const at = (temp: number, rpm: number) => {
    const model = whoGoesHungry();
    model.apply({ temp, rpm, pump: 0, bore: 0, filter: 22 });
    return model.now.value;
  };
  const cold = at(20, 700);
  expect(cold.lineAtCommand).toBe(true);
  expect(cold.intakeLmin).toBeLessThan(0.8 * cold.fullLmin);
  expect(at(20, 1500).intakeLmin).toBeCloseTo(cold.intakeLmin, 9);
  const hot = at(100, 700);
  expect(hot.intakeLmin).toBeCloseTo(hot.fullLmin, 9);
});

const hotIdle = (car: Car, circuit: 'forward' | 'reverse') => {
  const { lineKpa, clutches } = readingOf(car, { tempC: 100, circuit });
  return { line: lineKpa, tap: clutches[circuit].kPa };
};
const lineInPark = (car: Car): number => readingOf(car, { tempC: 100, applied: [] }).lineKpa;
const pump = { pumpWear: { severity: 0.5 } };
const rings = { sealingRings: { severity: 0.25, circuit: 'forward' as const } };

test('two faults at once: the pump keeps each tap close under its line, the rings one of them far', () => {
  const worn = makeCar({ faults: pump });
  for (const circuit of ['forward', 'reverse'] as const) {
    const { line, tap } = hotIdle(worn, circuit);
    expect(tap / line).toBeGreaterThan(0.9);
    expect(line).toBeLessThan(0.7 * 600);
  }
  const leaking = makeCar({ faults: rings });
  expect(hotIdle(leaking, 'forward').line).toBeGreaterThan(0.98 * 600);
  expect(hotIdle(leaking, 'reverse').line).toBeGreaterThan(0.98 * 780);

  const both = makeCar({ faults: { ...pump, ...rings } });
  expect(lineInPark(both)).toBeLessThan(0.7 * 600);
  expect(hotIdle(both, 'reverse').tap / hotIdle(both, 'reverse').line).toBeGreaterThan(0.9);
  expect(hotIdle(both, 'forward').tap / hotIdle(both, 'forward').line).toBeLessThan(0.5);
});

test('two faults at once: cold, the car whose rings were damaged cannot be told from a healthy one', () => {
  const cold = (car: Car) => readingOf(car, { tempC: 20, circuit: 'forward' }).clutches.forward.kPa;
  // The gauge of the lesson may be off by 20 kPa each time.
  expect(cold(makeCar({})) - cold(makeCar({ faults: oneFault('sealingRings', 20) }))).toBeLessThan(
    20,
  );
});
