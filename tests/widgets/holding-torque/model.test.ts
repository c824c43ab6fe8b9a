import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { effect } from '@preact/signals';
import { answer } from '../../../src/solve/answer.ts';
import { textFor } from '../../../src/quantity/unit-system.ts';
import { bookNumber, books, ours } from '../../../src/widgets/holding-torque/books.ts';
import {
  makeModel,
  type HoldingGivens,
  type HoldingModel,
} from '../../../src/widgets/holding-torque/model.ts';
import { sim } from '../../../src/widgets/holding-torque/sim.ts';
import { tasks } from '../../../src/widgets/holding-torque/tasks.ts';

const { predict, says } = sim;
const SEED = 20_240_612;
type Range = { readonly min: number; readonly max: number; readonly step: number };
const stops = ({ min, max, step }: Range): readonly number[] =>
  Array.from(
    { length: Math.round((max - min) / step) + 1 },
    (_, i) => Math.round((min + i * step) * 1e6) / 1e6,
  );
/** The stops of one of the controls. */
const stopsOf = (key: string): readonly number[] => {
  const control = sim.controls.find((one) => one.key === key);
  if (control?.kind !== 'number') throw new Error(`no slider ${key}`);
  return stops(control);
};
const anyOf = (key: string) => fc.constantFrom(...stopsOf(key));
const anyState = fc.record({
  pressure: anyOf('pressure'),
  friction: anyOf('friction'),
  faces: anyOf('faces'),
  area: anyOf('area'),
  radius: anyOf('radius'),
  spring: anyOf('spring'),
  required: fc.constantFrom('idle' as const, 'take-off' as const),
});
const at = (state: Partial<HoldingGivens>): HoldingModel => {
  const model = makeModel();
  model.apply(state);
  return model;
};

describe('the simulation as written', () => {
  it('takes the book example set by hand, from the numbers as either system prints them', () => {
    const task = tasks.find(({ id }) => id === 'by-the-book');
    if (!task) throw new Error('no such task');
    const byHand = { friction: 0.3, faces: 4, spring: 0 };
    const metric = { ...byHand, pressure: 127, area: 236, radius: 100 };
    // 18 psi, 36.5 in2, 3.94 in.
    const us = { ...byHand, pressure: 18 * 6.894757, area: 36.5 * 6.4516, radius: 3.94 * 25.4 };
    for (const numbers of [metric, us]) {
      const model = at({ ...task.start, ...numbers });
      expect(task.done(model)).toBe(true);
      expect(task.done(at({ ...task.start, ...numbers, spring: 900 }))).toBe(false);
    }
    expect(textFor(task.words, 'us')).toMatch(/18\spsi.*36\.5\sin².*3\.94\sin/u);
  });

  it('names the edges that the model finds', () => {
    const metBy = (id: string, key: 'faces' | 'friction') => {
      const task = tasks.find((one) => one.id === id);
      if (!task) throw new Error('no such task');
      return stopsOf(key).filter((value) => {
        const model = at(task.start);
        (model.givens[key] as { value: unknown }).value = value;
        return task.done(model);
      });
    };
    expect(metBy('worn-plates', 'friction')).toEqual([0.09]);
    expect(metBy('plates-short', 'faces')).toEqual([8]);
  });
});

describe('the prediction', () => {
  const run = (end: Partial<HoldingGivens>) => {
    const model = at({ ...predict.start, ...end });
    return predict.outcome(model).option;
  };
  it('comes out as the command line says', () => {
    // No crack, cold and stiff fluid: the clutch is at its command, so the answer's own pressure is the given.
    const [full, half] = [400, 200].map((clutch) => {
      const got = answer({
        kind: 'steady',
        temperature_C: 20,
        engine_rpm: 1500,
        line_kPa: 1000,
        clutch_kPa: clutch,
        applied: ['high'],
      }) as unknown as { circuits: { high: { pressure_kPa: number; holds_Nm: number } } };
      const { pressure_kPa, holds_Nm } = got.circuits.high;
      expect(at({ pressure: pressure_kPa }).torque.value).toBeCloseTo(holds_Nm, 9);
      return holds_Nm;
    });
    expect(half).toBeLessThan((full ?? 0) / 2);
    expect(run(predict.end)).toBe('less');
  });
  it('could have come out each of the other ways', () => {
    expect(run({ pressure: 200, spring: 0, area: 62.352941176470587 })).toBe('half');
    expect(run({ pressure: 300 })).toBe('more');
  });
  it('keeps the pressure that a task asks for to itself while the task is on', () => {
    const model = makeModel();
    model.apply({ pressure: 200, required: 'take-off' });
    // 323 kPa: (156 N·m / 0.0845 m + 900 N) / 85 cm², by hand.
    expect(says(model, 'si')).toContain('323');
    expect(says(model, 'si', true)).not.toContain('323');
  });

  it('says a sentence with a number for every option, in both systems', () => {
    for (const { why } of predict.options) {
      expect(textFor(why, 'si')).toMatch(/\d\sN/u);
      expect(textFor(why, 'us')).toMatch(/\d\slbf/u);
      expect(textFor(why, 'us')).not.toMatch(/kPa|\dN/u);
    }
  });
});

describe('the textbook examples', () => {
  /*
   * Khurmi and Gupta, Theory of Machines, ex. 10.28: 18.8 kW, printed to three figures, so half of
   * the last one. Bhandari, Design of Machine Elements, ex. 11.1 and 11.2: 235.619 and 366.519 N m,
   * so half of the last figure as well.
   */
  it.each([
    ['khurmi-10.28', 18.8, 0.05],
    ['bhandari-11.1', 235.619, 0.0005],
    ['bhandari-11.2', 366.519, 0.0005],
  ] as const)('%s comes out as the book prints it', (book, printed, half) => {
    expect(Math.abs(ours(book) - printed)).toBeLessThan(half);
    const model = makeModel();
    model.givens.example.value = book;
    const { prints } = books[book];
    const shown =
      prints.kind === 'torque'
        ? model.torque.value
        : (model.torque.value * prints.rpm * 2 * Math.PI) / 60 / 1000;
    expect(Math.abs(shown - printed)).toBeLessThan(half);
    expect(bookNumber(book, 'model', 'si')).toBe(bookNumber(book, 'book', 'si'));
    expect(says(model, 'si')).toContain(bookNumber(book, 'book', 'si'));
  });

  it('gives the forces that the second book prints', () => {
    // Bhandari 11.1: P = 15 707.963 N; 11.2: P = 23 561.945 N.
    expect(at({ example: 'bhandari-11.1' }).force.value.oil).toBeCloseTo(15707.963, 3);
    expect(at({ example: 'bhandari-11.2' }).force.value.oil).toBeCloseTo(23561.945, 3);
  });

  it('turns into your own clutch once a number is moved, and back when it is chosen again', () => {
    const model = at({ example: 'khurmi-10.28' });
    expect(model.givens.area.value).toBeCloseTo(235.619, 3);
    model.givens.faces.value = 5;
    expect(model.givens.example.value).toBe('own');
    model.givens.example.value = 'training';
    expect(model.givens.faces.value).toBe(10);
    expect(model.givens.pressure.value).toBe(127);
    model.givens.pressure.value = 300;
    expect(model.givens.example.value).toBe('training');
    model.apply({ example: 'training', faces: 4 });
    expect(model.givens.faces.value).toBe(4);
    expect(model.givens.example.value).toBe('own');
  });
});

describe('the model', () => {
  it('agrees with the formula, done by hand', () => {
    fc.assert(
      fc.property(anyState, (state) => {
        const { pressure, area, spring, friction, faces, radius } = state;
        const squeeze = Math.max(0, pressure * area * 0.1 - spring);
        const model = at(state);
        expect(model.torque.value).toBeCloseTo((friction * faces * radius * squeeze) / 1000, 6);
        expect(model.holds.value).toBe(model.torque.value >= model.need.value);
        const margin = pressure - model.needPressure.value;
        if (Math.abs(margin) > 1e-6) expect(model.holds.value).toBe(margin > 0);
      }),
      { seed: SEED, numRuns: 300 },
    );
  });

  it('has a finite number for everything', () => {
    fc.assert(
      fc.property(anyState, (state) => {
        const { torque, needPressure, springPressure, force, line } = at(state);
        const numbers = [
          torque.value,
          needPressure.value,
          springPressure.value,
          ...Object.values(force.value),
          ...line.value,
        ];
        expect(numbers.every((n) => Number.isFinite(n) && n >= 0)).toBe(true);
      }),
      { seed: SEED, numRuns: 150 },
    );
  });

  it('keeps the line at rest while pressure moves', () => {
    const model = makeModel();
    let lines = 0;
    effect(() => {
      lines += model.line.value.length > 0 ? 1 : 0;
    });
    model.givens.pressure.value = 100;
    expect(lines).toBe(1);
    model.givens.faces.value = 4;
    expect(lines).toBe(2);
  });
});
