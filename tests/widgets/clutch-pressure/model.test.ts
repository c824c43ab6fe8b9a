import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { effect } from '@preact/signals';
import { answer } from '../../../src/solve/answer.ts';
import { needs } from '../../../src/car/need.ts';
import { CRACK } from '../../../src/simulation/choices/number.ts';
import { needed } from '../../../src/simulation/required/control.ts';
import { TEMP } from '../../../src/simulation/choices/temperatures.ts';
import { letsGo } from '../../../src/widgets/clutch-pressure/hold-map.ts';
import {
  makeModel,
  SWEEP_TEMPS,
  type PressureGivens,
  type PressureModel,
} from '../../../src/widgets/clutch-pressure/model.ts';
import { sim } from '../../../src/widgets/clutch-pressure/sim.ts';
import { tasks } from '../../../src/widgets/clutch-pressure/tasks.ts';
import { textFor } from '../../../src/quantity/unit-system.ts';

const SEED = 20_240_611;
const { predict, says } = sim;

const steps = (min: number, max: number, step: number): readonly number[] =>
  Array.from(
    { length: Math.round((max - min) / step) + 1 },
    (_, i) => Math.round((min + i * step) * 1e6) / 1e6,
  );

/** What the command line says to the same question: the contract for outside checks. */
function asked(given: Partial<PressureGivens> & { temp: number; crack: number; rpm: number }) {
  const circuit = given.circuit ?? 'forward';
  // The model paper, 4: Reverse is boosted by 1.3.
  const boost = circuit === 'reverse' ? 1.3 : 1;
  const [line, clutch] = given.point === 'load' ? [1000, 800] : [600, 400];
  const got = answer({
    kind: 'steady',
    fluid: given.fluid ?? 'low-viscosity',
    temperature_C: given.temp,
    engine_rpm: given.rpm,
    line_kPa: line * boost,
    clutch_kPa: clutch * boost,
    applied: [circuit],
    faults: { transferSeal: given.crack / 0.4 },
  }) as unknown as {
    line_kPa: number;
    leftOver_Lmin: number;
    circuits: Record<string, { pressure_kPa: number; leak_Lmin: number; holds_Nm: number }>;
  };
  const one = got.circuits[circuit];
  if (!one) throw new Error('no such circuit in the answer');
  return { ...got, ...one };
}

const anyState = fc.record({
  temp: fc.integer({ min: TEMP.min, max: TEMP.max }),
  crack: fc.integer({ min: 0, max: 40 }).map((n) => n / 100),
  rpm: fc.integer({ min: 0, max: 50 }).map((n) => 500 + n * 50),
  required: fc.constantFrom('idle' as const, 'take-off' as const),
  circuit: fc.constantFrom('forward' as const, 'reverse' as const, 'high' as const),
  point: fc.constantFrom('idle' as const, 'load' as const),
  fluid: fc.constantFrom('standard' as const, 'low-viscosity' as const, 'ultra-low' as const),
});
const at = (state: Partial<PressureGivens>): PressureModel => {
  const model = makeModel();
  model.apply(state);
  return model;
};

describe('the simulation as written', () => {
  it('names the widest crack that the model finds', () => {
    const task = tasks.find(({ id }) => id === 'widest');
    if (!task) throw new Error('no such task');
    const model = at(task.start);
    const widest = steps(CRACK.min, CRACK.max, CRACK.step).filter((mm) => {
      model.givens.crack.value = mm;
      return task.done(model);
    });
    expect(widest).toEqual([0.13]);
    // A US reader's control steps by thousandths of an inch: 5 hold, 6 do not.
    const thousandths = steps(1, 15, 1).filter((thou) => {
      model.givens.crack.value = thou * 0.0254;
      return task.done(model);
    });
    expect(thousandths).toEqual([5]);
    expect(textFor(task.after, 'us')).toMatch(/With 5\sthousandths it holds, with 6\sthousandths/u);
    expect(textFor(task.after, 'si')).toMatch(
      /With 0\.13\smm it holds, with 0\.14\smm it does not/u,
    );
  });
});

describe('the words of a task', () => {
  it('are right that engine speed past the line’s command changes nothing at the clutch', () => {
    const [slow, fast] = [900, 2000].map((rpm) => asked({ temp: 120, crack: 0.25, rpm }));
    expect(slow?.line_kPa).toBe(600);
    expect(fast?.pressure_kPa).toBeCloseTo(slow?.pressure_kPa ?? Number.NaN, 9);
    expect(fast?.pressure_kPa).toBeLessThan(needed['take-off'].kPa);
    expect(asked({ temp: 120, crack: 0.25, rpm: 700 }).line_kPa).toBeLessThan(580);
  });
});

describe('the prediction', () => {
  const run = (end: Partial<PressureGivens>) => {
    const model = at({ ...predict.start, ...end });
    return predict.outcome(model).option;
  };
  it('comes out as the command line says', () => {
    const cold = asked({ temp: 20, crack: 0.25, rpm: 700 });
    const hot = asked({ temp: 100, crack: 0.25, rpm: 700 });
    expect(hot.line_kPa).toBe(600);
    expect(hot.leftOver_Lmin).toBeGreaterThan(0);
    expect(cold.pressure_kPa).toBeGreaterThan(needed['take-off'].kPa);
    expect(hot.pressure_kPa).toBeGreaterThan(needed.idle.kPa);
    expect(hot.pressure_kPa).toBeLessThan(needed['take-off'].kPa);
    expect(run(predict.end)).toBe('clutch');
  });
  it('could have come out each of the other ways', () => {
    expect(run({ temp: 21 })).toBe('same');
    expect(run({ temp: 130 })).toBe('line');
    expect(run({ temp: 100, crack: 0.35 })).toBe('gone');
  });
  it('says a sentence with a number for every option, in both systems', () => {
    for (const { why } of predict.options) {
      expect(textFor(why, 'si')).toMatch(/\d\skPa/u);
      expect(textFor(why, 'us')).toMatch(/\d\spsi/u);
      expect(textFor(why, 'us')).not.toContain('kPa');
    }
  });
});

describe('what is needed', () => {
  // By hand from ../shared/model.md 5 and 6: T = 2 (n/170)^2, p = (T / 0.0845 + 900) / 0.0085 Pa, with 0.0845 = 0.13 x 10 x 0.065.
  const byHand = (torque: number): number => (torque / 0.0845 + 900) / 8.5;
  it.each([
    ['idle, 700 rpm', needed.idle, 2 * (700 / 170) ** 2],
    ['take-off, 1500 rpm', needed['take-off'], 2 * (1500 / 170) ** 2],
    // Above idle plus 20 rpm the governor gives nothing: 180 u - 8 = (n/170)^2, twice that is held.
    ['gentle, throttle 0.2', needs.gentle, 2 * (180 * 0.2 - 8)],
  ])('%s', (_, need, torque) => {
    expect(need.torqueNm).toBeCloseTo(torque, 9);
    expect(need.kPa).toBeCloseTo(byHand(torque), 9);
  });
});

describe('the model', () => {
  it('says what the command line says', () => {
    fc.assert(
      fc.property(anyState, (state) => {
        const { now, clutch } = at(state);
        const other = asked(state);
        expect(clutch.value.kPa).toBeCloseTo(other.pressure_kPa, 9);
        expect(now.value.lineKpa).toBeCloseTo(other.line_kPa, 9);
        expect(clutch.value.holdsNm).toBeCloseTo(other.holds_Nm, 9);
        expect(now.value.leftOverLmin).toBeCloseTo(other.leftOver_Lmin, 9);
      }),
      { seed: SEED, numRuns: 200 },
    );
  });

  it('has a finite number for everything, and budgets that add up', () => {
    fc.assert(
      fc.property(anyState, (state) => {
        const model = at(state);
        for (const reading of [model.now.value, model.cold.value]) {
          const { intakeLmin, slipLmin, clearancesLmin, bleedLmin, leftOverLmin } = reading;
          const { rings, transferSeal } = reading.clutches[state.circuit].leaksLmin;
          const parts = [slipLmin, clearancesLmin, bleedLmin, rings, transferSeal, leftOverLmin];
          expect(parts.every((n) => Number.isFinite(n) && n >= 0)).toBe(true);
          const sum = parts.reduce((all, one) => all + one, 0);
          expect(Math.abs(sum - intakeLmin)).toBeLessThan(1e-8 * intakeLmin);
        }
        expect(model.feedOpen.value).toBeGreaterThanOrEqual(0);
        expect(model.feedOpen.value).toBeLessThanOrEqual(1);
        const lines = [...model.cracked.value, ...model.healthy.value];
        expect(lines).toHaveLength(2 * SWEEP_TEMPS.length);
        expect(lines.every((n) => Number.isFinite(n) && n >= 0)).toBe(true);
        expect(says(model, 'si')).not.toMatch(/NaN|undefined|no value/u);
      }),
      { seed: SEED, numRuns: 150 },
    );
  });

  // In frost the filter holds a slow pump back, and warming wins back line and clutch alike; every need lies far below.
  const NO_FROST = SWEEP_TEMPS.findIndex((tempC) => tempC >= 0);
  it('falls with temperature and with crack, so that one crossing is all there can be', () => {
    fc.assert(
      fc.property(anyState, (state) => {
        const model = at(state);
        const [kpa, healthy] = [model.cracked.value, model.healthy.value].map((all) =>
          all.slice(NO_FROST),
        ) as unknown as [readonly number[], readonly number[]];
        kpa.slice(1).forEach((p, i) => expect(p).toBeLessThanOrEqual((kpa[i] ?? 0) * (1 + 1e-3)));
        kpa.forEach((p, i) => expect(p).toBeLessThanOrEqual((healthy[i] ?? 0) + 1e-9));
        const cold = model.cracked.value.slice(0, NO_FROST);
        const least = Math.max(needed.idle.kPa, needed['take-off'].kPa);
        // One crossing: whatever holds at the end of the frost has held all through it.
        if ((kpa[0] ?? 0) > least) expect(Math.min(...cold)).toBeGreaterThan(least);
      }),
      { seed: SEED, numRuns: 100 },
    );
  });

  it('finds where it lets go to a hundredth of a degree', () => {
    const model = at({ crack: 0.25, point: 'load', rpm: 1500, required: 'take-off' });
    const edge = model.letsGo.value;
    if (edge.kind !== 'at') throw new Error('it should let go somewhere');
    const p = (temp: number) => asked({ temp, crack: 0.25, rpm: 1500, point: 'load' }).pressure_kPa;
    expect(p(edge.tempC - 0.01)).toBeGreaterThan(needed['take-off'].kPa);
    expect(p(edge.tempC + 0.01)).toBeLessThan(needed['take-off'].kPa);
    expect(says(model, 'si')).toMatch(
      new RegExp(`holds up to ${String(Math.round(edge.tempC))}\\s°C`, 'u'),
    );
  });

  it('keeps the limit that a task asks for to itself while the task is on', () => {
    const model = at({ crack: 0.25, required: 'idle', temp: 20 });
    expect(says(model, 'si')).toContain('holds up to');
    expect(says(model, 'si', true)).not.toContain('holds up to');
  });

  it('has words for always and never', () => {
    expect(letsGo(() => 1, 0.1)).toEqual({ kind: 'always' });
    expect(letsGo(() => -1, 0.1)).toEqual({ kind: 'never' });
    expect(says(at({ crack: 0 }), 'si')).toContain('holds at every temperature on the slider');
    const never = says(at({ crack: 0.4, fluid: 'ultra-low', rpm: 500 }), 'si');
    expect(never).toMatch(/never holds|holds up to \u2212/u);
  });

  it('tells a circuit that slips as well what it has', () => {
    const task = tasks.find(({ id }) => id === 'high');
    const model = makeModel();
    model.apply({ ...task?.start, circuit: 'reverse' });
    const { is, reached } = task?.verdict?.(model) ?? {};
    expect(is).toBe('not-that');
    expect(textFor(reached ?? '', 'us')).toContain('Reverse has');
    model.apply({ circuit: 'high' });
    expect(task?.verdict?.(model)?.is).toBe('done');
  });

  it('spares high whatever the crack', () => {
    const split = at({ circuit: 'high', crack: 0.4 }).clutch.value;
    const whole = at({ circuit: 'high', crack: 0 }).clutch.value;
    expect(split).toEqual(whole);
  });

  it('keeps map and lines at rest while temperature moves, and the map while the crack does', () => {
    const model = makeModel();
    const runs = { map: 0, lines: 0, now: 0 };
    effect(() => {
      runs.map += model.map.value.cells.length > 0 ? 1 : 0;
    });
    effect(() => {
      runs.lines += model.cracked.value.length + model.healthy.value.length > 0 ? 1 : 0;
    });
    effect(() => {
      runs.now += model.clutch.value.kPa >= 0 ? 1 : 0;
    });
    model.givens.temp.value = 60;
    expect(runs).toEqual({ map: 1, lines: 1, now: 2 });
    model.givens.crack.value = 0.3;
    expect(runs).toEqual({ map: 1, lines: 2, now: 3 });
    model.givens.rpm.value = 2000;
    expect(runs.map).toBe(2);
  });

  it('draws a map that agrees with the lines cell by cell', () => {
    fc.assert(
      fc.property(anyState, ({ temp, crack, ...rest }) => {
        const model = at({ ...rest, crack: Math.round(crack * 100) / 100 });
        const column = Math.round((temp - TEMP.min) / 5);
        const row = Math.round(crack * 100);
        model.givens.temp.value = TEMP.min + column * 5;
        const gap = model.clutch.value.kPa - model.need.value.kPa;
        // A cell on the edge itself may round either way.
        if (Math.abs(gap) < 1e-6) return;
        expect(model.map.value.cells[row]?.[column]).toBe(gap > 0 ? 'holds' : 'slips');
      }),
      { seed: SEED, numRuns: 100 },
    );
  });

  it('puts every point of the edge where pressure is exactly what is needed', () => {
    const model = at({ required: 'take-off', point: 'load', rpm: 1500 });
    const { contour } = model.map.value;
    expect(contour.length).toBeGreaterThan(15);
    for (const [temp, crack] of contour) {
      const { pressure_kPa } = asked({ temp, crack, rpm: 1500, point: 'load' });
      expect(pressure_kPa).toBeCloseTo(needed['take-off'].kPa, 6);
    }
  });
});
