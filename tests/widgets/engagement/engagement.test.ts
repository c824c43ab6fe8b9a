import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FAULT_IDS, faultKinds } from '../../../src/engine/index.ts';
import { textFor } from '../../../src/quantity/unit-system.ts';
import { makeModel, SHOWN, type EngagementModel } from '../../../src/widgets/engagement/model.ts';
import { sim } from '../../../src/widgets/engagement/sim.ts';
import { tasks } from '../../../src/widgets/engagement/tasks.ts';
import { begun } from '../../simulation/task-of.ts';

const task = (id: string) => begun(tasks, makeModel, id);

describe('the simulation as written', () => {
  it('ends the prediction in Park', () => {
    const model = makeModel();
    model.apply({ ...sim.predict.start, ...sim.predict.end });
    const { option, words } = sim.predict.outcome(model);
    expect(option).toBe('park');
    expect(textFor(words, 'si')).toContain('selects Park by itself');
  });

  // 0.25 mm over 25.4 µm is 9.84: ten thousandths of an inch.
  it('asks about the crack that the course follows', () => {
    const crack = (faultKinds.transferSeal.worst * makeModel().givens.severity.value) / 100;
    expect(crack).toBeCloseTo(0.25, 9);
    expect(textFor(sim.predict.question, 'us')).toContain('10\u00a0thousandths');
  });

  it('does not take frost for heat where it asks for the edge', () => {
    const { task: edge, model } = task('edge');
    model.apply({ temp: -28 });
    expect(edge.verdict?.(model)?.is).toBe('too-low');
    model.apply({ temp: 120 });
    expect(edge.verdict?.(model)?.is).toBe('too-high');
  });

  it('lets the edge be found by temperature alone', () => {
    const { task: edge, model } = task('edge');
    const found: number[] = [];
    for (let temp = -30; temp <= 140; temp += 2) {
      model.apply({ temp });
      if (edge.done(model)) found.push(temp);
    }
    expect(found.length).toBeGreaterThan(0);
    // One place, not several: the stopping time rises with heat.
    expect(Math.max(...found) - Math.min(...found)).toBeLessThanOrEqual(4);
  });

  it('lets the cable task be met by the selection and not by the range', () => {
    const { task: cable, model } = task('cable');
    model.apply({ range: 'reverse' });
    expect(cable.done(model)).toBe(false);
    model.apply({ selection: 'mechanical' });
    expect(cable.done(model)).toBe(true);
  });

  it('lets a fault be found that is late cold', () => {
    const { task: late, model } = task('late-cold');
    const ways = FAULT_IDS.filter((fault) => {
      model.apply({ fault, severity: 90 });
      return late.done(model);
    });
    expect(ways).toContain('feedRestriction');
    expect(ways).not.toContain('turbineSensor');
  });

  it('lets the false sensor be the only fault that codes without slip', () => {
    const { task: liar, model } = task('liar');
    const ways = FAULT_IDS.filter((fault) => {
      model.apply({ fault });
      return liar.done(model);
    });
    expect(ways).toEqual(['turbineSensor']);
  });
});

describe('over every control', () => {
  const anyState = fc.record({
    temp: fc.integer({ min: -30, max: 140 }),
    severity: fc.integer({ min: 0, max: 100 }),
    fault: fc.constantFrom(...FAULT_IDS),
    selection: fc.constantFrom('electronic' as const, 'mechanical' as const),
    range: fc.constantFrom('drive' as const, 'reverse' as const),
    failSafe: fc.constantFrom('neutral' as const, 'default-gear' as const),
    fluid: fc.constantFrom('standard' as const, 'low-viscosity' as const, 'ultra-low' as const),
    show: fc.constantFrom(...SHOWN),
  });
  it('gives numbers and a sentence', () => {
    fc.assert(
      fc.property(anyState, (state) => {
        const model: EngagementModel = makeModel();
        model.apply(state);
        for (const run of [model.cold.value, model.hot.value]) {
          expect(run.solved.status.converged).toBe(true);
          for (const column of [...Object.values(run.speeds), run.pressure, run.wanted]) {
            expect(column).toHaveLength(model.times.length);
            expect(column.every(Number.isFinite)).toBe(true);
          }
        }
        for (const system of ['si', 'us'] as const) {
          expect(sim.says(model, system)).not.toMatch(/NaN|undefined|Infinity/);
        }
      }),
      { numRuns: 150, seed: 20_261_125 },
    );
  });
});
