import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { taskOf } from '../../simulation/task-of.ts';
import { answer } from '../../../src/solve/answer.ts';
import { textFor } from '../../../src/quantity/unit-system.ts';
import { needs } from '../../../src/car/need.ts';
import {
  ABOVE,
  drive,
  KINDS,
  LONGEST,
  makeModel,
  MINUTES,
  OUTSIDE,
  START,
  TIMES,
  type WarmUpGivens,
} from '../../../src/widgets/warm-up/model.ts';
import { sim } from '../../../src/widgets/warm-up/sim.ts';
import { tasks } from '../../../src/widgets/warm-up/tasks.ts';

const { says } = sim;

const at = (state: Partial<WarmUpGivens>) => {
  const model = makeModel();
  model.apply({ ...START, ...state });
  return model;
};
const task = (id: string) => taskOf(tasks, id);

describe('the simulation as written', () => {
  it('says how long, in words', () => {
    expect(says(at({}), 'si')).toMatch(
      /^After 25 minutes of gentle driving it will let go, at 87\s°C\.$/u,
    );
  });
  it('ends the prediction far from the edge, and could have ended the other ways', () => {
    const { predict } = sim;
    const run = (end: Partial<WarmUpGivens>) => {
      const model = makeModel();
      model.apply({ ...predict.start, ...predict.end, ...end });
      return predict.outcome(model).option;
    };
    expect(run({})).toBe('far');
    expect(run({ required: 'take-off' })).toBe('shows');
  });

  const walks: Record<string, readonly Partial<WarmUpGivens>[]> = {
    winter: Array.from({ length: 76 }, (_, i) => ({ outside: OUTSIDE.min + i })),
    idle: Array.from({ length: 41 }, (_, i) => ({ crack: i / 100 })),
  };
  it('has one edge in the weather and one in the crack', () => {
    const winter = (walks['winter'] ?? []).filter((move) =>
      task('winter').done(at({ ...task('winter').start, ...move })),
    );
    expect(winter.length).toBeLessThanOrEqual(3);
    const idle = (walks['idle'] ?? []).filter((move) =>
      task('idle').done(at({ ...task('idle').start, ...move })),
    );
    expect(idle).toHaveLength(1);
    const inThousandths = Array.from({ length: 15 }, (_, i) => (i + 1) * 0.0254).filter((crack) =>
      task('idle').done(at({ ...task('idle').start, crack })),
    );
    expect(inThousandths).toHaveLength(1);
  });
});

/**
 * Euler, a step a second or what is left of one: C dT/dt = P - UA (T - Tamb) + 80 W/K (Tc - T), the coolant on its way to
 * 88 C with a time constant of 300 s; numbers of ../shared/model.md 9.
 */
function euler(outside: number, watts: (second: number) => number, seconds: number): number {
  let temp = outside;
  for (let second = 0; second < seconds; second += 1) {
    const step = Math.min(1, seconds - second);
    const coolantC = 88 - (88 - outside) * Math.exp(-second / 300);
    temp += (step * (watts(second) - 26 * (temp - outside) + 80 * (coolantC - temp))) / 46_000;
  }
  return temp;
}

describe('the drive', () => {
  it('warms as the equation says, integrated the plain way', () => {
    const temp = euler(5, (second) => [1000, 6000, 2200][Math.floor(second / 1200)] ?? 0, 3600);
    const model = at({ outside: 5, kind1: 'idling', kind2: 'pulling', kind3: 'gentle' });
    // First order in the step: a second in a time constant of 434 s, 0.1 % of the 100 K it moves.
    expect(Math.abs(model.end.value.tempC - temp)).toBeLessThan(0.1);
    expect(model.end.value.minute).toBe(LONGEST);
  });

  it('crosses where the command line says the clutch lets go', () => {
    const model = at({});
    const found = model.shows.value;
    if (found.when !== 'at') throw new Error('it should show');
    const tempC = euler(20, () => 2200, found.minute * 60);
    const pressure = (temperature_C: number): number =>
      (
        answer({
          kind: 'steady',
          temperature_C,
          engine_rpm: 700,
          line_kPa: 600,
          clutch_kPa: 400,
          applied: ['forward'],
          faults: { transferSeal: 0.25 / 0.4 },
        }) as unknown as { circuits: { forward: { pressure_kPa: number } } }
      ).circuits.forward.pressure_kPa;
    // The step of the plain way leaves it a twentieth of a degree off.
    expect(pressure(tempC - 0.15)).toBeGreaterThan(needs.gentle.kPa);
    expect(pressure(tempC + 0.15)).toBeLessThan(needs.gentle.kPa);
  });

  it('joins its stretches without a jump, and leaves out those of no minutes', () => {
    const all = drive({
      outside: -10,
      above: 30,
      parts: [
        { kind: 'pulling', minutes: 10 },
        { kind: 'gentle', minutes: 0 },
        { kind: 'idling', minutes: 5 },
      ],
    });
    expect(all).toHaveLength(2);
    expect(all[1]?.startC).toBe(all[0]?.endC);
    expect(all[1]?.to).toBe(15);
  });

  it('shows it at once when it starts warmer, and never when no temperature does it', () => {
    expect(at({ above: 80 }).shows.value.when).toBe('at-once');
    expect(at({ crack: 0 }).shows.value.when).toBe('never');
    expect(at({ crack: 0.16, minutes1: 10, minutes2: 0, minutes3: 0 }).shows.value.when).toBe(
      'not-on-this-drive',
    );
  });
});

describe('over every control', () => {
  const kind = fc.constantFrom(...KINDS);
  const length = fc.integer({ min: MINUTES.min, max: MINUTES.max });
  it('gives numbers and a sentence', () => {
    fc.assert(
      fc.property(
        fc.record({
          outside: fc.integer({ min: OUTSIDE.min, max: OUTSIDE.max }),
          crack: fc.integer({ min: 0, max: 40 }).map((n) => n / 100),
          kind1: kind,
          minutes1: length,
          kind2: kind,
          minutes2: length,
          kind3: kind,
          minutes3: length,
          above: fc.integer({ min: ABOVE.min, max: ABOVE.max }),
          required: fc.constantFrom('idle' as const, 'take-off' as const),
        }),
        (state) => {
          const model = at(state);
          const temps = model.temps.value;
          expect(temps).toHaveLength(TIMES.length);
          const end = model.end.value.minute;
          temps.forEach((temp, i) => {
            if ((TIMES[i] ?? 0) <= end) expect(Number.isFinite(temp)).toBe(true);
            else expect(temp).toBeNull();
          });
          for (const system of ['si', 'us'] as const) {
            expect(says(model, system)).not.toMatch(/NaN|undefined|Infinity|null/);
          }
        },
      ),
      { numRuns: 150, seed: 20_261_125 },
    );
  });
  it('prints every sentence in the reader’s units', () => {
    const words = [
      sim.predict.question,
      ...sim.predict.options.flatMap((option) => [option.words, option.why]),
      ...tasks.flatMap((one) => [one.words, one.hint, one.after]),
    ];
    for (const one of words) {
      expect(textFor(one, 'us')).not.toMatch(/°C|NaN|undefined/);
      expect(textFor(one, 'si')).not.toMatch(/°F|NaN|undefined/);
    }
  });
});
