import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { taskOf } from '../../simulation/task-of.ts';
import { answer } from '../../../src/solve/answer.ts';
import { makeModel, START, type SeesGivens } from '../../../src/widgets/controller-sees/model.ts';
import { recordAll } from '../../../src/car/record.ts';
import {
  bringRecordings,
  recipes,
  recording,
  RECORDING_IDS,
  SELECT,
} from '../../../src/car/recordings.ts';
import { sim } from '../../../src/widgets/controller-sees/sim.ts';
import { tasks } from '../../../src/widgets/controller-sees/tasks.ts';
import { score } from '../../../src/widgets/controller-sees/print.ts';

bringRecordings(recordAll());

const at = (state: Partial<SeesGivens>) => {
  const model = makeModel();
  model.apply({ ...START, ...state });
  return model;
};
const task = (id: string) => taskOf(tasks, id);
const exact = { noise: 0, resolution: 0 };
const range = (from: number, to: number, step: number): number[] =>
  Array.from(
    { length: Math.round((to - from) / step) + 1 },
    (_, i) => Math.round((from + i * step) * 1e6) / 1e6,
  );

describe('the simulation as written', () => {
  it('ends the prediction with the driver in a hurry, and could have ended the other ways', () => {
    const { predict } = sim;
    const run = (end: Partial<SeesGivens>) =>
      predict.outcome(at({ ...predict.start, ...end })).option;
    expect(run(predict.end)).toBe('hurry');
    expect(run({})).toBe('nothing');
    expect(run({ engagementTime: 0.8 })).toBe('frost');
  });

  it('lets the cracks be caught by a range of limits, of which the usual ones are one', () => {
    const { done, start } = task('both-cracks');
    const met = range(0.05, 2, 0.05).filter((slipTime) =>
      done(at({ ...start, slipLimit: 80, slipTime })),
    );
    expect(met).toContain(START.slipTime);
    expect(Math.min(...met)).toBeGreaterThan(at({}).healthyWorst.value.longestOver);
    expect(met.length).toBeGreaterThan(1);
  });

  it('lets worn friction be caught without a false alarm, and the thin crack not', () => {
    const states = range(0.3, 2.4, 0.05).map((engagementTime) => at({ engagementTime }));
    expect(states.some((model) => task('friction').done(model))).toBe(true);
    expect(states.some((model) => task('price').done(model))).toBe(true);
    const parted = states.filter(
      (model) => model.of('crack16').verdict === 'caught' && model.falseAlarms.value.length === 0,
    );
    expect(parted).toEqual([]);
  });

  it('lets noise fail the healthy hot car, by the engagement check, once it passes that limit', () => {
    const alarms = range(0, 300, 5).filter((noise) =>
      task('noise').done(at({ recording: 'hot', noise })),
    );
    expect(Math.min(...alarms)).toBeGreaterThanOrEqual(
      START.engagementLimit - START.resolution / 2,
    );
    expect(at({ noise: Math.min(...alarms) }).of('hot').failed?.check).toBe('engagement');
  });
});

describe('a replay', () => {
  // Until the controller first acts, the open loop and the engine's closed loop are one story.
  it.each([
    ['crack25', 0.25],
    ['crack30', 0.3],
    ['crack16', 0.16],
  ] as const)('%s fails a check where the command line says', (id, mm) => {
    const solved = answer({
      kind: 'engagement',
      temperature_C: recipes[id].tempC,
      rangeSelection: 'electronic',
      range: 'drive',
      faults: { transferSeal: mm / 0.4 },
    }) as unknown as { events: { time_s: number; event: string }[] };
    const first = (names: readonly string[]) =>
      solved.events.find(({ event }) => names.includes(event))?.time_s;
    const mine = at(exact).of(id);
    const raised = mine.events.find(({ event }) => event === 'pressure raised')?.time;
    const failed = first(['engagement not finished', 'pressure raised']);
    expect(mine.failed === null ? undefined : mine.failed.after + SELECT).toEqual(
      failed === undefined ? undefined : expect.closeTo(failed, 9),
    );
    const raisedThere = first(['pressure raised']);
    expect(raised).toEqual(raisedThere === undefined ? undefined : expect.closeTo(raisedThere, 9));
  });

  it('counts the hurried driver’s slip as a hand count of the trace does', () => {
    // Throttle opens 0.2 a second from 0.9 s, so the check runs from 1.0 s (0.02); no limit is crossed before.
    const { turbineRpm, outputRpm } = recording('hurry');
    const over = range(100, 200, 1).filter(
      (row) => Math.abs((turbineRpm[row] ?? 0) - 4 * (outputRpm[row] ?? 0)) > 80,
    );
    const counted = ((over.at(-1) ?? 0) - (over[0] ?? 0)) / 100;
    expect(at(exact).of('hurry').longestOver).toBeCloseTo(counted, 9);
  });

  it('sees slip as turbine less ratio times output, while the car rolls', () => {
    // The model page, section on the controller; first gear of the training transmission is 4.
    const { turbineRpm, outputRpm } = recording('crack25');
    const { slipSeen } = at(exact).of('crack25');
    for (const row of [300, 450, 600]) {
      const byHand = Math.abs((turbineRpm[row] ?? NaN) - 4 * (outputRpm[row] ?? NaN));
      expect(slipSeen[row]).toBeCloseTo(byHand, 9);
    }
    expect(outputRpm[600]).toBeGreaterThan(20);
  });

  it('stores the code for a wrong ratio in first gear', () => {
    // SAE J2012: P0731, gear 1 incorrect ratio (wording from public lists).
    const stored = at(exact)
      .of('crack25')
      .events.find(({ event }) => event === 'code stored');
    expect(stored?.code).toBe('P0731');
  });

  it('fails no healthy recording at the usual limits', () => {
    expect(at({}).falseAlarms.value).toEqual([]);
    expect(score(at({}), 'us')).toBe('Faults caught: 2 of 4. False alarms: 0 of 4.');
  });

  it('takes no longer to store a code when the time is halved', () => {
    const [slow, quick] = [at(exact), at({ ...exact, slipTime: 0.15 })];
    for (const id of RECORDING_IDS) {
      const [a, b] = [slow.of(id).codeAfter, quick.of(id).codeAfter];
      if (a !== null) expect(b).toBeLessThan(a);
    }
  });
});

describe('over every control', () => {
  const [limit, time, , checkTime, checkLimit, noise, resolution] = sim.controls;
  const within = (control: (typeof sim.controls)[number] | undefined) => {
    if (control?.kind !== 'number') throw new Error('It should be a number.');
    return fc.double({ min: control.min, max: control.max, noNaN: true });
  };
  it('gives numbers and sentences', () => {
    fc.assert(
      fc.property(
        fc.record({
          slipLimit: within(limit),
          slipTime: within(time),
          engagementTime: within(checkTime),
          engagementLimit: within(checkLimit),
          noise: within(noise),
          resolution: within(resolution),
          recording: fc.constantFrom(...RECORDING_IDS),
        }),
        (state) => {
          const model = at(state);
          for (const one of model.all.value) {
            expect(one.slipSeen.every((rpm) => Number.isFinite(rpm) && rpm >= 0)).toBe(true);
            expect(Number.isFinite(one.longestOver)).toBe(true);
            if (one.failed) expect(one.failed.after).toBeGreaterThan(0);
          }
          for (const system of ['si', 'us'] as const) {
            expect(sim.says(model, system)).not.toMatch(/NaN|undefined|Infinity/);
          }
        },
      ),
      { numRuns: 120, seed: 20_261_125 },
    );
  });
});
