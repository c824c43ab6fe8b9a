import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { severityOf, sitsInOneCircuit } from '../../../src/car/car.ts';
import { CIRCUITS, type Circuit, type FaultId } from '../../../src/engine/index.ts';
import { textFor } from '../../../src/quantity/unit-system.ts';
import { answer } from '../../../src/solve/answer.ts';
import {
  makeModel,
  PLACES,
  SWEEP_TEMPS,
  type HeatAndAirGivens,
} from '../../../src/widgets/heat-and-air/model.ts';
import { at, sim } from '../../../src/widgets/heat-and-air/sim.ts';
import { tasks } from '../../../src/widgets/heat-and-air/tasks.ts';

const SEED = 20_261_128;
const PERCENT = Array.from({ length: 101 }, (_, i) => i);
interface State {
  readonly fault: FaultId;
  readonly severity: number;
  readonly circuit: Circuit;
}
const anyState = fc.record({
  fault: fc.constantFrom(...PLACES),
  severity: fc.constantFrom(...PERCENT),
  circuit: fc.constantFrom(...CIRCUITS),
});
const faultsFor = ({ fault, severity, circuit }: State) => {
  const share = severityOf(fault, severity);
  return { [fault]: sitsInOneCircuit(fault) ? { severity: share, circuit } : share };
};
/** The idle test as a request to the command line, with the model paper's commands: 600 and 400 kPa, Reverse 1.3 times. */
function asked(state: State, temperature_C: number): number {
  const boost = state.circuit === 'reverse' ? 1.3 : 1;
  const got = answer({
    kind: 'steady',
    temperature_C,
    engine_rpm: 700,
    line_kPa: boost * 600,
    clutch_kPa: boost * 400,
    applied: [state.circuit],
    faults: faultsFor(state),
  }) as unknown as { circuits: Record<string, { pressure_kPa: number }> };
  return got.circuits[state.circuit]?.pressure_kPa ?? Number.NaN;
}

describe('the model', () => {
  it('says what the command line says, in the car and on the bench', () => {
    fc.assert(
      fc.property(anyState, fc.constantFrom(-10, 20, 60, 100), (state, temp) => {
        const model = at({ ...state, temp });
        expect(model.now.value).toBeCloseTo(asked(state, temp), 6);
        for (const [place, circuit] of [
          ['circuit', state.circuit],
          ['seal', 'transferSeal'],
        ] as const) {
          const got = answer({ kind: 'airTest', circuit, faults: faultsFor(state) });
          const { held_percent } = got as unknown as { held_percent: number };
          expect(model.air.value[place]).toBeCloseTo(held_percent, 9);
        }
      }),
      { seed: SEED, numRuns: 60 },
    );
  });

  it('draws one line over the temperatures that the state stands on', () => {
    const model = at({ severity: 60, temp: SWEEP_TEMPS[40] ?? 0 });
    expect(model.here.value[40]).toBeCloseTo(model.now.value, 9);
    expect(model.healthy.value[40]).toBeCloseTo(model.healthyNow.value, 9);
  });

  // Common practice, no source: what air finds is what it is put on, and what a valve body off leaves out.
  it('has no air lost through what lies on the bench beside it', () => {
    for (const fault of ['transferSeal', 'clutchControl', 'feedRestriction'] as const) {
      expect(at({ fault, severity: 100 }).air.value.circuit).toBeCloseTo(
        at({ severity: 0 }).air.value.circuit,
        9,
      );
    }
  });
});

describe('the prediction', () => {
  const run = (state: Partial<HeatAndAirGivens>) =>
    sim.predict.outcome(at({ ...sim.predict.start, ...state })).option;

  it('comes out as the command line says', () => {
    const worn: State = { fault: 'sealingRings', severity: 20, circuit: 'forward' };
    const whole: State = { ...worn, severity: 0 };
    const half = asked(worn, 100) / asked(whole, 100);
    expect(half).toBeGreaterThan(0.45);
    expect(half).toBeLessThan(0.6);
    expect(asked(worn, 20) / asked(whole, 20)).toBeGreaterThan(0.95);
    const held = (state: State) =>
      (
        answer({ kind: 'airTest', circuit: 'forward', faults: faultsFor(state) }) as never as {
          held_percent: number;
        }
      ).held_percent;
    expect(held(worn) / held(whole)).toBeLessThan(half / 2);
    expect(run(sim.predict.end)).toBe('far-less');
  });

  it('could have come out each of the other ways', () => {
    expect(run({ fault: 'transferSeal', severity: 40 })).toBe('like-healthy');
    expect(run({ fault: 'pistonSeal', severity: 20 })).toBe('in-step');
  });

  it('says a sentence with a number for every option, in both systems', () => {
    for (const { why } of sim.predict.options) {
      expect(textFor(why, 'si')).toMatch(/\d\s%/u);
      expect(textFor(why, 'us')).not.toContain('kPa');
    }
  });
});

describe('the tasks', () => {
  /** Every fault that a task's own controls reach and that meets it. */
  const answersOf = (id: string): readonly string[] => {
    const task = tasks.find((one) => one.id === id);
    if (!task) throw new Error(`no task ${id}`);
    const model = makeModel();
    model.apply(task.start);
    return PLACES.filter((fault) =>
      PERCENT.some((severity) => {
        model.apply({ fault, severity });
        return task.done(model);
      }),
    );
  };

  // Each is told by readings alone, and its explanation names one cause.
  it.each([
    ['only-in-the-morning', ['hardLip']],
    ['passes-the-air-test', ['clutchControl']],
    ['by-air', ['sealingRings']],
  ])('task %s is met by %s and nothing else', (id, makers) => {
    expect(answersOf(id)).toEqual(makers);
  });
});
