import { readFileSync } from 'node:fs';
import { describe, expect, it, test } from 'vitest';
import { airReading } from '../../../src/car/air-bench.ts';
import { makeCar, soundCar } from '../../../src/car/car.ts';
import { clutchKpa } from '../../../src/car/readings.ts';
import {
  airHeldBehind,
  airHoleFlow,
  BENCH_AIR,
  CIRCUITS,
  holeArea,
  training,
  type AirTestTarget,
} from '../../../src/engine/index.ts';
import { makeModel, START, type BenchAirGivens } from '../../../src/widgets/bench-air/model.ts';
import { at, sim } from '../../../src/widgets/bench-air/sim.ts';
import { tasks } from '../../../src/widgets/bench-air/tasks.ts';
import { FINDINGS, UNITS } from '../../../src/widgets/bench-air/units.ts';
import { begun } from '../../simulation/task-of.ts';

interface Truth {
  readonly plain: readonly {
    readonly leak: number;
    readonly hole: number;
    readonly supply: number;
    readonly held: number;
  }[];
  readonly units: readonly (readonly [
    number,
    AirTestTarget,
    number,
    number,
    boolean,
    number,
    boolean,
  ])[];
}
const truth = JSON.parse(
  readFileSync(new URL('../../truth/bench_air.json', import.meta.url), 'utf8'),
) as Truth;
const says = (state: Partial<BenchAirGivens>, inTask = false): string =>
  sim.says(at(state), 'us', inTask);

describe('tests/truth/bench_air.py: nozzle and slot in Python, from the model paper alone', () => {
  // Its gas constant is 287.05 where the engine has 287.0528: a hundred thousandth in what a slot passes.
  it('plain holes behind the measuring hole', () => {
    for (const { leak, hole, held } of truth.plain)
      expect(
        100 *
          airHeldBehind(holeArea(hole / 1e3), BENCH_AIR, (air) =>
            airHoleFlow(holeArea(leak / 1e3), air),
          ),
      ).toBeCloseTo(held, 6);
  });
  it('each unit, in each place, on five rigs, wet and dry', () => {
    expect(truth.units).toHaveLength(6 * 4 * 5 * 2);
    for (const [number, on, supply, hole, wet, held, thud] of truth.units) {
      const { here } = at({ unit: String(number), target: on, supply, hole, wet });
      expect(here.value.held, `${number} ${on} ${supply} ${hole} ${wet}`).toBeCloseTo(held, 2);
      expect(here.value.thud).toBe(thud);
    }
  });
});

// By hand, without the nozzle's law: as long as both holes are choked, what passes goes as pressure times area, so the
// absolute pressures go as the areas turned about. Critical ratio 0.5283 for air (White, Fluid Mechanics, table B.1, from memory).
test('two choked holes in a row: the pressures are as the areas', () => {
  const air = { supply: 101_325 + 552e3, ambient: 101_325, tempK: 293.15 };
  const behind = (1.5 / 2.1) ** 2 * air.supply;
  expect(behind / air.supply).toBeLessThan(0.5283);
  expect(air.ambient / behind).toBeLessThan(0.5283);
  expect(
    airHeldBehind(holeArea(1.5e-3), air, (held) => airHoleFlow(holeArea(2.1e-3), held)),
  ).toBeCloseTo((behind - air.ambient) / 552e3, 9);
});

// Common practice, no source: no number without its sister, and wet alike.
test('what the lesson says of the ear holds: dry, good and bad hiss alike and none thuds', () => {
  const dry = UNITS.flatMap((_unit, i) =>
    CIRCUITS.map((on) => at({ unit: String(i + 1), target: on, wet: false }).here.value),
  );
  for (const { loud, thud } of dry) {
    expect(loud).toBeGreaterThan(0.99);
    expect(thud).toBe(false);
  }
  for (const circuit of CIRCUITS) {
    const wet = airReading(soundCar, circuit, { supply: 275, hole: 1.5, wet: true });
    expect(wet.thud).toBe(true);
    expect(wet.loud).toBeLessThan(0.75);
  }
});

test('wet, each leak comes out where the part is', () => {
  UNITS.forEach(({ finding, at: place }, i) => {
    if (finding === 'nothing') return;
    expect(at({ unit: String(i + 1), target: place }).here.value.most).toBe(
      finding === 'sealingRings' ? 'rings' : finding,
    );
  });
});

// What the gauge is said to have read of each is what the unit does in the car, at idle: low is under six tenths of a sound one.
test('each unit reads low hot where its line says, and nowhere else', () => {
  const low = (tempC: number) =>
    UNITS.map(({ faults }) =>
      CIRCUITS.filter(
        (circuit) =>
          clutchKpa(makeCar({ faults }), { tempC, circuit }) <
          0.6 * clutchKpa(soundCar, { tempC, circuit }),
      ),
    );
  expect(low(100)).toEqual([
    ['forward', 'reverse'],
    ['reverse'],
    ['forward'],
    ['high'],
    ['forward'],
    [],
  ]);
  expect(low(20)).toEqual([[], [], ['forward'], [], [], []]);
});

test('holding cold air is no proof: units 1 and 5 hold like a good one in every circuit', () => {
  for (const unit of ['1', '5'])
    for (const on of CIRCUITS)
      expect(at({ unit, target: on }).here.value.held).toBeCloseTo(
        at({ unit: '6', target: on }).here.value.held,
        9,
      );
  expect(at({ unit: '1', target: 'transferSeal' }).here.value.held).toBeLessThan(40);
});

// The lesson says that the line pushes more than twice as hard as the air.
test('the line at idle is more than twice the air of the rig', () => {
  expect(training.testPoints.idle.line / 1e3).toBeGreaterThan(2 * START.supply);
});

// TM 9-2320-280-34, para. 17-8: 50 psi; TM 9-2320-387-24-2, para. 28-10: 80 psi.
test('too high a supply is refused, with the printed ceiling named', () => {
  expect(at({ supply: 345 }).shut.value).toBe(false);
  expect(says({ supply: 345 })).not.toMatch(/shut/u);
  expect(says({ supply: 413.7 })).toMatch(/60\spsi is over 50\spsi.*stays shut/u);
  expect(says({ supply: 600 })).toMatch(/50\spsi and 80\spsi.*stays shut/u);
});

test('the run ends as its sister, and could have ended the other ways', () => {
  const outcome = (state: Partial<BenchAirGivens>) => sim.predict.outcome(at(state)).option;
  expect(outcome({ ...sim.predict.start, ...sim.predict.end })).toBe('sister');
  expect(outcome({ ...START, unit: '2', target: 'reverse' })).toBe('same');
  expect(outcome({ ...START, unit: '4', target: 'high', hole: 2 })).toBe('half');
});

test('a name is judged by the unit, and not told in a task', () => {
  UNITS.forEach(({ finding }, i) => {
    for (const named of FINDINGS) {
      const state = { unit: String(i + 1), named };
      expect(says(state)).toMatch(named === finding ? /right/iu : /Not that/u);
      expect(says(state, true)).not.toMatch(/right|Not that/u);
    }
  });
});

test('the tasks tell a shut valve, a hole too wide or too narrow, and a dry test', () => {
  const rig = begun(tasks, makeModel, 'set-up-the-rig');
  const is = () => rig.task.verdict?.(rig.model)?.is;
  expect(is()).toBe('too-high');
  for (const [hole, verdict] of [
    [3, 'too-high'],
    [1, 'too-low'],
    [1.5, 'done'],
  ] as const) {
    rig.model.apply({ supply: 275, hole });
    expect(is(), String(hole)).toBe(verdict);
  }
  rig.model.apply({ supply: 150 });
  expect(is()).toBe('too-low');

  const name = begun(tasks, makeModel, 'name-the-part');
  name.model.apply({ named: 'pistonSeal' });
  expect(name.task.verdict?.(name.model)?.is).toBe('nearly');
  name.model.apply({ wet: true });
  expect(name.task.done(name.model)).toBe(true);
  name.model.apply({ named: 'sealingRings' });
  expect(name.task.verdict?.(name.model)?.is).toBe('not-that');

  const nothing = begun(tasks, makeModel, 'air-finds-nothing');
  for (const named of FINDINGS) {
    nothing.model.apply({ named });
    expect(nothing.task.done(nothing.model), named).toBe(named === 'nothing');
  }
});
