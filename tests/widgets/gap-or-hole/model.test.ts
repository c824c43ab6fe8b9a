import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answer } from '../../../src/solve/answer.ts';
import {
  makeModel,
  type GapOrHoleGivens,
  type GapOrHoleModel,
} from '../../../src/widgets/gap-or-hole/model.ts';
import { sim } from '../../../src/widgets/gap-or-hole/sim.ts';
import { tasks } from '../../../src/widgets/gap-or-hole/tasks.ts';
import { sharesInWords } from '../../../src/widgets/gap-or-hole/Below.tsx';
import { printLeak } from '../../../src/widgets/gap-or-hole/print.ts';

const task = (id: string) => {
  const found = tasks.find((one) => one.id === id);
  if (!found) throw new Error(`no task "${id}"`);
  return found;
};
const at = (givens: Partial<GapOrHoleGivens>): GapOrHoleModel => {
  const model = makeModel();
  model.apply(givens);
  return model;
};

describe('the gap-or-hole widget', () => {
  it('says of the crack what the request interface says', () => {
    const model = at({ temp: 85, height: 0.13, pressure: 620, fluid: 'standard' });
    const asked = answer({
      kind: 'gap',
      fluid: 'standard',
      temperature_C: 85,
      pressure_kPa: 620,
      width_mm: 14,
      height_mm: 0.13,
      length_mm: 3,
    }) as { flow_Lmin: number; reynolds: number; viscousShare: number };
    expect(model.crack.value.leak).toBeCloseTo(asked.flow_Lmin, 9);
    expect(model.crack.value.reynolds).toBeCloseTo(asked.reynolds, 6);
    expect(model.crack.value.viscousShare).toBeCloseTo(asked.viscousShare, 9);
  });

  // check-values and issue 2: 20 to 100 °C, about 11 for the thin gap, 1.03 for the hole.
  it.each(['standard', 'low-viscosity'] as const)('grows as published for %s', (fluid) => {
    const { growth } = at({ height: 0.05, pressure: 600, fluid });
    expect(growth.value.crack).toBeGreaterThan(10.5);
    expect(growth.value.crack).toBeLessThan(12);
    expect(growth.value.hole).toBeCloseTo(1.03, 2);
  });

  it('ends the run in what the model says', () => {
    const model = at({ ...sim.predict.start });
    expect(model.crack.value.leak).toBeCloseTo(model.hole.value, 9);
    model.apply(sim.predict.end);
    expect(model.crack.value.leak).toBeGreaterThan(9 * model.hole.value);
    expect(sim.predict.outcome(model).option).toBe('crack');
  });

  it('lets every task be done with its own controls, and not by any move', () => {
    const reach: Readonly<Record<string, Partial<GapOrHoleGivens>>> = {
      'eight-times': { height: 0.08 },
      'like-a-hole': { height: 0.4 },
      'five-to-one': { temp: 64 },
      'end-of-law': { height: 0.3, temp: 110 },
    };
    const miss: Readonly<Record<string, Partial<GapOrHoleGivens>>> = {
      'eight-times': { height: 0.15 },
      'like-a-hole': { height: 0.2 },
      'five-to-one': { temp: 110 },
      'end-of-law': { height: 0.08, temp: 110 },
    };
    for (const { id, start, controls } of tasks) {
      const move = reach[id] ?? {};
      expect(controls).toEqual(expect.arrayContaining(Object.keys(move)));
      expect([id, task(id).done(at({ ...start, ...move }))]).toEqual([id, true]);
      expect([id, task(id).done(at({ ...start, ...miss[id] }))]).toEqual([id, false]);
    }
  });

  it('warns in words above Reynolds 2000, and only there', () => {
    const wild = at({ temp: 120, height: 0.4, pressure: 1000 });
    expect(sim.says(wild, 'us')).toContain('outside its range');
    const calm = at({ temp: 120, height: 0.05, pressure: 400 });
    expect(sim.says(calm, 'us')).not.toContain('outside its range');
    expect(wild.lawEndsAt.value).toBeLessThan(120);
    expect(calm.lawEndsAt.value).toBeNull();
  });

  it('gives shares that add up to a hundred', () => {
    expect(sharesInWords(0.966)).toBe(
      'Of this pressure, 97\u00a0% is spent rubbing along the walls, 3\u00a0% getting in and out.',
    );
    expect(sharesInWords(0.9991)).toContain('nearly all');
    expect(printLeak(0.0003, 'us')).toContain('less than');
  });

  it('has no NaN, always finds the hole, and has both alike at 20 °C', { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(
        fc.record({
          temp: fc.double({ min: -30, max: 140, noNaN: true }),
          height: fc.double({ min: 0.02, max: 0.4, noNaN: true }),
          pressure: fc.double({ min: 100, max: 1000, noNaN: true }),
          fluid: fc.constantFrom('standard', 'low-viscosity', 'ultra-low'),
        }),
        (givens) => {
          const model = at(givens);
          expect(model.drill.value.converged).toBe(true);
          const { crack, hole, rubbing } = model.curves.value;
          for (const value of [...crack, ...hole]) expect(value).toBeGreaterThan(0);
          for (const share of rubbing) {
            expect(share).toBeGreaterThanOrEqual(0);
            expect(share).toBeLessThanOrEqual(100 + 1e-9);
          }
          for (const system of ['si', 'us'] as const) {
            expect(sim.says(model, system)).not.toMatch(/NaN|Infinity|no value|e\+/u);
          }
          model.apply({ temp: 20 });
          expect(model.hole.value / model.crack.value.leak).toBeCloseTo(1, 9);
        },
      ),
      { seed: 20, numRuns: 300 },
    );
  });

  it('repaints within its share of a frame', () => {
    const model = makeModel();
    let seen = 0;
    const start = performance.now();
    for (let i = 0; i < 200; i += 1) {
      model.apply({ height: 0.02 + (i % 38) * 0.01 });
      seen += model.curves.value.crack.length + (model.lawEndsAt.value ?? 0);
    }
    expect((performance.now() - start) / 200).toBeLessThan(4);
    expect(seen).toBeGreaterThan(0);
  });
});
