import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { taskOf } from '../../simulation/task-of.ts';
import { answer } from '../../../src/solve/answer.ts';
import { needs } from '../../../src/car/need.ts';
import {
  FEED,
  makeModel,
  pressureAt,
  type Rolling,
  type WayFault,
  type WaysGivens,
} from '../../../src/widgets/two-ways/model.ts';
import { COLD_C, HOT_C } from '../../../src/car/cold-and-hot.ts';
import { sim } from '../../../src/widgets/two-ways/sim.ts';
import { edge, tasks } from '../../../src/widgets/two-ways/tasks.ts';
import { cableRoles, wireRoles, type Roles } from '../../../src/widgets/two-ways/roles.ts';
import { stoppedAfter } from '../../../src/widgets/two-ways/stopping.ts';

const at = (state: Partial<WaysGivens>) => {
  const model = makeModel();
  model.apply(state);
  return model;
};
const task = (id: string) => taskOf(tasks, id);
const allOf = ({ hand, controller, park }: Roles): readonly string[] => [hand, controller, park];
const RANGES = ['P', 'R', 'N', 'D'] as const;
const FAULTS: readonly WayFault[] = ['none', 'slip', 'misSet', 'noPower'];
const CARS: readonly Rolling[] = ['standing', 'rolling'];
const FAIL_SAFES = ['neutral', 'default-gear'] as const;

describe('the simulation as written', () => {
  it('parks the one by wire only', () => {
    const { predict } = sim;
    expect(predict.outcome(at({ ...predict.start, ...predict.end })).option).toBe('electronic');
    expect(predict.outcome(at(predict.start)).option).toBe('neither');
  });
  it('lets every task be met by its own controls', () => {
    const { hand, home, first } = {
      hand: task('hand'),
      home: task('home'),
      first: task('neutral-first'),
    };
    expect(RANGES.filter((range) => hand.done(at({ ...hand.start, range })))).toEqual(['P']);
    const ways = RANGES.flatMap((range) =>
      FAIL_SAFES.filter((failSafe) => home.done(at({ ...home.start, range, failSafe }))).map(
        (failSafe) => `${range} ${failSafe}`,
      ),
    );
    expect(ways).toEqual(['R default-gear', 'D default-gear']);
    const cases = FAULTS.flatMap((fault) =>
      CARS.filter((car) => first.done(at({ ...first.start, fault, car }))).map(
        (car) => `${fault} ${car}`,
      ),
    );
    expect(cases).toEqual(['slip rolling']);
  });
  it('has one short stretch of the port where the edge is found', () => {
    const shut = task('shut');
    const met = Array.from({ length: 91 }, (_, i) => FEED.min + i).filter((feed) =>
      shut.done(at({ ...shut.start, feed })),
    );
    expect(met.length).toBeGreaterThan(0);
    expect(met.length).toBeLessThanOrEqual(3);
    // The words after it speak of the cold clutch at this one.
    expect(met).toContain(edge());
  });
});

describe('who can do what', () => {
  it('agrees with a solved engagement about where fail-safe ends', () => {
    // The default crack of the story, hot: the car stands on the brake when slip is seen.
    for (const rangeSelection of ['electronic', 'mechanical'] as const) {
      const solved = answer({
        kind: 'engagement',
        temperature_C: 100,
        rangeSelection,
        range: 'drive',
        faults: { transferSeal: 0.75 },
      }) as unknown as { events: { event: string }[] };
      const parks = solved.events.some(({ event }) => event === 'park commanded');
      const model = at({ range: 'D', fault: 'slip', car: 'standing' });
      expect(model.parked.value[rangeSelection]).toBe(parks);
    }
  });

  it('never lets a controller park the box by cable', () => {
    for (const range of RANGES)
      for (const fault of FAULTS)
        for (const failSafe of FAIL_SAFES)
          for (const car of CARS)
            expect(at({ range, fault, failSafe, car }).parked.value.mechanical).toBe(range === 'P');
  });

  it('leaves the one by wire alone when the cable is mis-set: it has none', () => {
    for (const range of RANGES) {
      const { failSafe, power } = at({ range, fault: 'misSet' }).electronic.value;
      expect({ failSafe, power }).toEqual({ failSafe: false, power: true });
      expect(at({ range, fault: 'misSet' }).fed.value.electronic).toBe(
        at({ range, fault: 'none' }).fed.value.electronic,
      );
    }
  });

  it('says the trade fact about the stop, and that it is one', () => {
    const { hand } = cableRoles(at({ fault: 'misSet' }));
    expect(hand).toContain('just past the eye, not hard against it');
    expect(hand).toContain('common practice, no source');
  });
});

describe('what a mis-set cable does', () => {
  it('gives the pressures of the command line', () => {
    for (const feed of [10, 33, 50, 100])
      for (const temperature_C of [20, 100]) {
        const got = answer({
          kind: 'steady',
          temperature_C,
          engine_rpm: 700,
          line_kPa: 600,
          clutch_kPa: 400,
          applied: ['forward'],
          faults: { feedRestriction: (1 - feed / 100) / 0.9 },
        }) as unknown as { circuits: { forward: { pressure_kPa: number } } };
        const model = at({ range: 'D', fault: 'misSet', feed });
        const mine = temperature_C === 20 ? model.cold.value : model.hot.value;
        expect(mine).toBeCloseTo(got.circuits.forward.pressure_kPa, 6);
      }
  });
  it('fills later and holds less the more it is shut', () => {
    // More shut than this, the turbine does not stop within the story.
    const ports = [100, 85, 70, 55, 40];
    for (const tempC of [COLD_C, HOT_C]) {
      const has = ports.map((open) => pressureAt('forward', open, tempC));
      const late = ports.map((open) => stoppedAfter('forward', open, tempC) ?? 99);
      expect(has).toEqual([...new Set(has)].sort((a, b) => b - a));
      expect(late).toEqual([...new Set(late)].sort((a, b) => a - b));
    }
  });
  it('stops the turbine when the command line says', () => {
    const solved = answer({
      kind: 'engagement',
      temperature_C: HOT_C,
      rangeSelection: 'mechanical',
      range: 'drive',
      faults: { feedRestriction: 0.5 / 0.9 },
    }) as unknown as { events: { time_s: number; event: string }[] };
    const stop = solved.events.find(({ event }) => event === 'turbine stopped');
    // Drive is selected at 0.5 s.
    expect(stoppedAfter('forward', 50, HOT_C)).toBeCloseTo((stop?.time_s ?? NaN) - 0.5, 6);
  });
  it('spares the cold clutch long after the hot one has gone', () => {
    const model = at({ fault: 'misSet', feed: 30 });
    expect(model.hot.value).toBeLessThan(needs.firm.kPa);
    expect(model.cold.value).toBeGreaterThan(needs.firm.kPa);
  });
});

describe('over every control', () => {
  it('gives numbers and sentences', () => {
    fc.assert(
      fc.property(
        fc.record({
          range: fc.constantFrom(...RANGES),
          fault: fc.constantFrom(...FAULTS),
          failSafe: fc.constantFrom(...FAIL_SAFES),
          car: fc.constantFrom(...CARS),
          feed: fc.double({ min: FEED.min, max: FEED.max, noNaN: true }),
        }),
        (state) => {
          const model = at(state);
          for (const { value } of [model.cold, model.hot])
            expect(Number.isFinite(value) && value >= 0).toBe(true);
          const sentences = [
            ...allOf(wireRoles(model, 'us')),
            ...allOf(cableRoles(model)),
            sim.says(model, 'us'),
            sim.says(model, 'si'),
          ];
          for (const one of sentences) expect(one).toMatch(/^[^]{8,}\.\)?$/u);
          for (const one of sentences) expect(one).not.toMatch(/NaN|undefined|null/);
        },
      ),
      { numRuns: 100, seed: 20_261_125 },
    );
  });
});
