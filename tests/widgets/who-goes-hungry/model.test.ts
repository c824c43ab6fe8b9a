import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { effect } from '@preact/signals';
import { answer } from '../../../src/solve/answer.ts';
import { textFor } from '../../../src/quantity/unit-system.ts';
import type { Reading } from '../../../src/car/readings.ts';
import { TEMP } from '../../../src/simulation/choices/temperatures.ts';
import {
  COMMANDS,
  makeModel,
  SPEED,
  type PumpGivens,
  type PumpModel,
} from '../../../src/widgets/who-goes-hungry/model.ts';
import { BORE, FILTER, sim, WEAR } from '../../../src/widgets/who-goes-hungry/sim.ts';
import { tasks } from '../../../src/widgets/who-goes-hungry/tasks.ts';

const { predict, says } = sim;
const SEED = 20_240_613;
type Range = { readonly min: number; readonly max: number; readonly step: number };
const stops = ({ min, max, step }: Range): readonly number[] =>
  Array.from(
    { length: Math.round((max - min) / step) + 1 },
    (_, i) => Math.round((min + i * step) * 1e6) / 1e6,
  );
const ways: Readonly<Record<keyof PumpGivens, readonly number[]>> = {
  rpm: stops(SPEED),
  temp: stops(TEMP),
  pump: stops(WEAR),
  bore: stops(BORE),
  filter: stops(FILTER),
};
const anyState = fc.record({
  rpm: fc.constantFrom(...ways.rpm),
  temp: fc.constantFrom(...ways.temp),
  pump: fc.constantFrom(...ways.pump),
  bore: fc.constantFrom(...ways.bore),
  filter: fc.constantFrom(...ways.filter),
});
const at = (state: Partial<PumpGivens>): PumpModel => {
  const model = makeModel();
  model.apply({ pump: 0, ...state });
  return model;
};

/** What the command line says to the same question: the contract for outside checks. */
function asked(given: Partial<PumpGivens> & { temp: number; rpm: number }) {
  return answer({
    kind: 'steady',
    temperature_C: given.temp,
    engine_rpm: given.rpm,
    line_kPa: 600,
    clutch_kPa: 400,
    applied: ['forward'],
    faults: {
      pumpWear: (given.pump ?? 0) / 100,
      regulatorBore: (given.bore ?? 0) / 0.25,
      filter: ((given.filter ?? 1) - 1) / 59,
    },
  }) as unknown as {
    line_kPa: number;
    pump_Lmin: number;
    leftOver_Lmin: number;
    circuits: { forward: { pressure_kPa: number } };
  };
}

describe('the simulation as written', () => {
  it('does not take a worn pump for car A nor a clogged filter for car B', () => {
    const [carA, carB] = ['car-a', 'car-b'].map((id) => tasks.find((task) => task.id === id));
    if (!carA || !carB) throw new Error('no such task');
    for (const pump of ways.pump) expect(carA.done(at({ ...carA.start, pump }))).toBe(false);
    for (const filter of ways.filter) {
      expect(carB.done(at({ ...carB.start, pump: 0, filter }))).toBe(false);
    }
  });

  it('says in task words what the command line says', () => {
    const words = (id: string): string => {
      const task = tasks.find((one) => one.id === id);
      if (!task) throw new Error('no such task');
      return textFor(task.words, 'si');
    };
    const clogged = asked({ temp: 20, rpm: 3000, filter: 30 });
    expect(words('car-a')).toContain(`${clogged.leftOver_Lmin.toFixed(2)}\u00a0L/min`);
    const worn = asked({ temp: 100, rpm: 700, pump: 25 });
    expect(words('car-b')).toContain(`${Math.round(worn.line_kPa)}\u00a0kPa`);
  });
});

describe('the prediction', () => {
  const run = (state: Partial<PumpGivens>) =>
    predict.outcome(at({ ...predict.start, ...state })).option;
  it('comes out as the command line says', () => {
    const hot = asked({ temp: 100, rpm: 700, pump: 20 });
    const cold = asked({ temp: 20, rpm: 700, pump: 20 });
    expect(hot.leftOver_Lmin).toBe(0);
    expect(hot.line_kPa / cold.line_kPa).toBeLessThan(0.9);
    expect(hot.circuits.forward.pressure_kPa / cold.circuits.forward.pressure_kPa).toBeGreaterThan(
      0.95,
    );
    expect(run(predict.end)).toBe('converter-first');
  });
  it('could have come out otherwise', () => {
    expect(run({ temp: 40 })).toBe('nobody');
    expect(run({ temp: 100, pump: 8 })).toBe('nobody');
    // Worn so far that the line is below what the clutch is commanded, the clutch still loses the smaller share.
    expect(run({ temp: 100, pump: 60 })).toBe('converter-first');
  });
  it('says a sentence with a number for every option, in both systems', () => {
    for (const { why } of predict.options) {
      expect(textFor(why, 'si')).toMatch(/\d\skPa/u);
      expect(textFor(why, 'us')).toMatch(/\d\spsi/u);
      expect(textFor(why, 'us')).not.toMatch(/kPa|L\/min/u);
    }
  });
});

describe('the model', () => {
  it('says what the command line says', () => {
    fc.assert(
      fc.property(anyState, (state) => {
        const { now } = at(state);
        const other = asked(state);
        expect(now.value.lineKpa).toBeCloseTo(other.line_kPa, 6);
        expect(now.value.clutches.forward.kPa).toBeCloseTo(other.circuits.forward.pressure_kPa, 6);
        expect(now.value.leftOverLmin).toBeCloseTo(other.leftOver_Lmin, 6);
        expect(now.value.pumpLmin).toBeCloseTo(other.pump_Lmin, 6);
      }),
      { seed: SEED, numRuns: 200 },
    );
  });

  it('has a finite number for everything, and budgets that add up', () => {
    const whole = (reading: Reading): void => {
      const { intakeLmin, slipLmin, clearancesLmin, bleedLmin, boreLmin, leftOverLmin } = reading;
      const feed = reading.clutches.forward.feedLmin;
      const parts = [slipLmin, clearancesLmin, bleedLmin, boreLmin, feed, leftOverLmin];
      expect(parts.every((n) => Number.isFinite(n) && n >= 0)).toBe(true);
      const sum = parts.reduce((all, one) => all + one, 0);
      expect(Math.abs(sum - intakeLmin)).toBeLessThan(1e-8 * intakeLmin);
      expect(intakeLmin).toBeLessThanOrEqual(reading.fullLmin * (1 + 1e-12));
    };
    fc.assert(
      fc.property(anyState, (state) => {
        const model = at(state);
        [model.now.value, model.cold.value, model.healthy.value].forEach(whole);
        for (const { line, leftOver } of [model.sweep.value, model.coldSweep.value]) {
          expect([...line, ...leftOver].every((n) => Number.isFinite(n) && n >= 0)).toBe(true);
        }
        for (const system of ['si', 'us'] as const) {
          expect(says(model, system)).not.toMatch(/NaN|undefined|no value/u);
        }
      }),
      { seed: SEED, numRuns: 60 },
    );
  });

  it('loses in one order: what is left over first, then the line, and the clutch last', () => {
    fc.assert(
      fc.property(anyState, (state) => {
        const model = at(state);
        const { now } = model;
        const { leftOverLmin, lineKpa, clutches } = now.value;
        if (leftOverLmin > 0) expect(lineKpa).toBe(COMMANDS.line);
        if (lineKpa < COMMANDS.line - 1e-6) expect(leftOverLmin).toBe(0);
        // Never more in the clutch than in the line.
        expect(clutches.forward.kPa).toBeLessThanOrEqual(lineKpa + 1e-9);
        const { line, leftOver } = model.fed.value;
        if (line !== 'fed') expect(leftOver).toBe('starved');
      }),
      { seed: SEED, numRuns: 200 },
    );
  });

  it('finds the speed that feeds the line to a tenth of a turn', () => {
    fc.assert(
      fc.property(anyState, (state) => {
        const from = at(state).fedFrom.value;
        const lineAt = (rpm: number): number => asked({ ...state, rpm }).line_kPa;
        if (from.kind === 'always') expect(lineAt(SPEED.min)).toBe(600);
        if (from.kind === 'never') expect(lineAt(SPEED.max)).toBeLessThan(600);
        if (from.kind === 'at') {
          expect(lineAt(from.rpm - 0.1)).toBeLessThan(600);
          expect(lineAt(from.rpm + 0.1)).toBe(600);
        }
      }),
      { seed: SEED, numRuns: 150 },
    );
  });

  it('shows the filter cold and fast and the pump hot and slow', () => {
    const filter = at({ filter: 30 }).twoReadings.value;
    const pump = at({ pump: 70 }).twoReadings.value;
    const sound = at({}).twoReadings.value;
    expect(filter.hotIdle).toEqual(sound.hotIdle);
    expect(filter.coldFast.leftOverLmin).toBeLessThan(0.2 * sound.coldFast.leftOverLmin);
    expect(pump.coldFast.leftOverLmin).toBeGreaterThan(0.95 * sound.coldFast.leftOverLmin);
    expect(pump.hotIdle.lineKpa).toBeLessThan(0.75 * sound.hotIdle.lineKpa);
  });

  it('keeps both sweeps at rest while speed moves, and the cold one while temperature does', () => {
    const model = makeModel();
    const runs = { cold: 0, now: 0 };
    effect(() => {
      runs.cold += model.coldSweep.value.line.length > 0 ? 1 : 0;
    });
    effect(() => {
      runs.now += model.sweep.value.line.length > 0 ? 1 : 0;
    });
    model.givens.rpm.value = 1500;
    expect(runs).toEqual({ cold: 1, now: 1 });
    model.givens.temp.value = 60;
    expect(runs).toEqual({ cold: 1, now: 2 });
    model.givens.pump.value = 10;
    expect(runs).toEqual({ cold: 2, now: 3 });
  });
});
