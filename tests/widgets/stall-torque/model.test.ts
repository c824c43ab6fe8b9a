import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { textFor } from '../../../src/quantity/unit-system.ts';
import { heatAt, makeModel, type StallGivens } from '../../../src/widgets/stall-torque/model.ts';
import { sim } from '../../../src/widgets/stall-torque/sim.ts';
import { tasks } from '../../../src/widgets/stall-torque/tasks.ts';

const at = (state: Partial<StallGivens>) => {
  const model = makeModel();
  model.apply(state);
  return model;
};
/** Frozen from tests/content/question-keys.py, which never saw src/engine. */
const truth = JSON.parse(readFileSync('tests/content/question-keys.json', 'utf8')) as Record<
  string,
  number
>;

describe('the model', () => {
  it('asks what the rival program asks, at idle and at 1500 rpm', () => {
    expect(at({ rpm: 700 }).asked.value).toBeCloseTo(truth['torque-standing'] ?? 0, 6);
    expect(at({ rpm: 1500 }).asked.value).toBeCloseTo(truth['torque-firm'] ?? 0, 6);
  });

  // SAE J643: capacity factor K = speed / sqrt(torque), so torque goes with the square of the speed, power with its cube.
  it('has torque go with the square and heat with the cube of engine speed', () => {
    expect(at({ rpm: 1800 }).asked.value / at({ rpm: 600 }).asked.value).toBeCloseTo(9, 9);
    expect(heatAt(2000) / heatAt(1000)).toBeCloseTo(8, 9);
  });

  // Power is torque times angular speed; the training converter has K 170 and doubles at rest.
  it('puts all of the engine’s power into heat', () => {
    const torque = (1000 / 170) ** 2;
    expect(heatAt(1000)).toBeCloseTo((torque * 1000 * 2 * Math.PI) / 60 / 1e3, 9);
  });

  it('lets go where what is asked passes what the clutch can hold', () => {
    const edge = at({ pressure: 300 }).letsGo.value;
    for (const [rpm, holds] of [
      [edge - 1, true],
      [edge + 1, false],
    ] as const) {
      const model = at({ pressure: 300, rpm });
      expect(model.holds.value >= model.asked.value).toBe(holds);
      expect(model.needs.value <= 300).toBe(holds);
    }
  });
});

describe('the prediction', () => {
  const run = (state: Partial<StallGivens>) =>
    sim.predict.outcome(at({ ...sim.predict.start, ...state })).option;
  it('comes out as the square says, and could have come out otherwise', () => {
    expect(run(sim.predict.end)).toBe('fourfold');
    expect(run({ rpm: 750 })).toBe('same');
    expect(run({ rpm: 1000 })).toBe('twice');
  });
});

it('each task is told in words that hold', () => {
  const [letsGo, firm, heat] = tasks.map(({ after }) => textFor(after, 'us'));
  expect(letsGo).toMatch(/From 700\srpm to 8\d0\srpm/u);
  expect(firm).toMatch(/holds from 47\spsi on, against 22\spsi/u);
  expect(heat).toMatch(/eight times/u);
});
