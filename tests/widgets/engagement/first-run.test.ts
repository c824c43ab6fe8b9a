import { describe, expect, it } from 'vitest';
import { firstRun } from '../../../src/widgets/engagement/first-run.ts';
import { bringFirstRun, makeModel } from '../../../src/widgets/engagement/model.ts';

// No answer key: what the page brings is held against the same solver asked anew.
const solved = makeModel();
const { cold } = solved;
const asSolved = cold.value;
bringFirstRun(firstRun());

describe('the cold run that comes with the page', () => {
  const model = makeModel();
  it('is not solved again, and is the one that would be', () => {
    const brought = model.cold.value;
    expect(brought.solved).not.toHaveProperty('trace');
    expect(brought.solved.events).toHaveLength(asSolved.solved.events.length);
    expect(brought.solved.stoppedAfter).toBeCloseTo(asSolved.solved.stoppedAfter ?? Number.NaN, 5);
    expect(model.times).toHaveLength(solved.times.length);
    for (const column of ['pressure', 'wanted'] as const) {
      brought[column].forEach((value, i) => {
        expect(value, `${column} ${i}`).toBeCloseTo(asSolved[column][i] ?? Number.NaN, 2);
      });
    }
    for (const [name, values] of Object.entries(asSolved.speeds)) {
      brought.speeds[name as keyof typeof brought.speeds].forEach((value, i) => {
        expect(value, `${name} ${i}`).toBeCloseTo(values[i] ?? Number.NaN, 1);
      });
    }
  });

  it('gives way as soon as something is moved that it depends on', () => {
    const was = model.cold.value;
    model.apply({ temp: 40, show: 'engine' });
    expect(model.cold.value).toBe(was);
    model.apply({ severity: 0 });
    expect(model.cold.value.solved).toHaveProperty('trace');
  });
});
