import { describe, expect, it } from 'vitest';
import { LIVE_RECORDINGS } from '../../../src/car/live-cars.ts';
import { recordSome } from '../../../src/car/record.ts';
import { bringRecordings } from '../../../src/car/recordings.ts';
import { textFor } from '../../../src/quantity/unit-system.ts';
import {
  listOf,
  makeModel,
  START,
  type TrapGivens,
} from '../../../src/widgets/sampling-trap/model.ts';
import { sim } from '../../../src/widgets/sampling-trap/sim.ts';
import { tasks } from '../../../src/widgets/sampling-trap/tasks.ts';
import { begun } from '../../simulation/task-of.ts';

bringRecordings(recordSome(LIVE_RECORDINGS));

const at = (state: Partial<TrapGivens>) => {
  const model = makeModel();
  model.apply({ ...START, ...state });
  return model;
};
const two = listOf('range', 'turbine');
const begin = (id: string) => begun(tasks, makeModel, id);
const is = (id: string, ...states: readonly Partial<TrapGivens>[]) =>
  states.map((state) => {
    const { task, model } = begin(id);
    model.apply(state);
    return task.verdict?.(model)?.is;
  });

describe('the prediction', () => {
  it('reads its rows as one does by hand', () => {
    const model = at(sim.predict.start);
    // Rows every half second; Park at 0.5, Drive from 1.0, turning at 1.5, standing at 2.0.
    const rows = Array.from(model.log.value?.turbine.slice(0, 5) ?? []);
    expect(rows.map((rpm) => rpm > 30)).toEqual([true, true, true, true, false]);
    expect(Array.from(model.log.value?.range?.slice(0, 4) ?? [])).toEqual([1, 1, 4, 4]);
    expect(model.stop.value).toMatchObject({ kind: 'stopped', after: { low: 0.5, high: 1.5 } });
    expect(textFor(sim.predict.question, 'us')).toContain('1.00');
  });

  it('ends with both ends open, and would not if Drive were timed by itself', () => {
    const model = at({ ...sim.predict.start, ...sim.predict.end });
    expect(sim.predict.outcome(model).option).toBe('both');
  });
});

describe('the cars that fit', () => {
  it('are fewer the more readings there are, and never without the one that was logged', () => {
    for (const car of LIVE_RECORDINGS) {
      const counts = [{ line: 20 }, { line: 100 }, { line: 100, ...two }].map((state) => {
        const fits = at({ ...state, car }).fits.value.map((one) => one.car);
        expect(fits).toContain(car);
        return fits.length;
      });
      expect(counts).toEqual([...counts].sort((a, b) => b - a));
    }
  });
});

describe('a sensor that drops out', () => {
  it('is no stop, however many rows have it', () => {
    const quick = at({ line: 100, ...two, car: 'plug' });
    expect(quick.dropouts.value.length).toBeGreaterThan(1);
    expect(quick.stop.value).toMatchObject({ kind: 'stopped' });
    const { after } = quick.stop.value as { after: { low: number; high: number } };
    const truth = quick.standsAfter('plug') ?? Number.NaN;
    expect(after.low).toBeLessThanOrEqual(truth);
    expect(after.high).toBeGreaterThanOrEqual(truth);
    expect(sim.says(quick, 'us')).toMatch(/sensor or plug/u);
  });

  it('is in one log of ten at two readings a second', () => {
    // 0.05 s of every 0.5 s, by hand; the control has twenty stops. It comes back before the turbine stops.
    const seen = Array.from({ length: 20 }, (_, i) => at({ car: 'plug', late: 5 * i })).filter(
      ({ dropouts }) => dropouts.value.length > 0,
    );
    expect(seen.length).toBe(2);
  });
});

describe('what is not on the list', () => {
  it('is not in the log', () => {
    expect(at({ ...listOf('range') }).log.value).toBeNull();
    expect(sim.says(at({ ...listOf('turbine'), line: 20 }), 'us')).toMatch(/range/u);
  });
});

describe('the tasks', () => {
  it('asks for more than two readings to a swing', () => {
    // Three items: 30 values are 10 each, 60 are 20, 70 are 23.3.
    expect(is('smooth', { line: 30 }, { line: 60 }, { line: 70 })).toEqual([
      'too-low',
      'nearly',
      'done',
    ]);
  });

  it('asks for the slowest line that cannot miss a twentieth of a second', () => {
    expect(is('plug', { line: 50 }, { line: 60 }, { line: 70 })).toEqual([
      'nearly',
      'done',
      'nearly',
    ]);
    expect(is('plug', { line: 100 })).toEqual(['too-high']);
    const logs = Array.from({ length: 20 }, (_, i) => 5 * i).map((late) => {
      const { model } = begin('plug');
      model.apply({ line: 60, late });
      return model.dropouts.value.length;
    });
    expect(Math.min(...logs)).toBeGreaterThan(0);
  });

  it('takes any list of six or fewer that has start, end and degrees', () => {
    const three = listOf('range', 'turbine', 'temperature');
    const six = listOf('range', 'turbine', 'temperature', 'brake', 'gear', 'engine');
    const seven = { ...six, voltage: true };
    expect(is('list', three, six, seven)).toEqual(['done', 'done', 'nearly']);
    expect(is('list', { ...three, range: false }, listOf())).toEqual(['not-that', 'not-that']);
  });
});
