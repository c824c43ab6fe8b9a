import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answer } from '../../../src/solve/answer.ts';
import { textFor } from '../../../src/quantity/unit-system.ts';
import { needed } from '../../../src/widgets/clutch-pressure/needed.ts';
import {
  FEED,
  makeTwoWays,
  type Rolling,
  type WayFault,
  type WaysGivens,
} from '../../../src/widgets/two-ways/model.ts';
import { HOT_C } from '../../../src/car/cold-and-hot.ts';
import { sim } from '../../../src/widgets/two-ways/sim.ts';
import { tasks } from '../../../src/widgets/two-ways/tasks.ts';
import {
  electronicRoles,
  mechanicalRoles,
  type Roles,
} from '../../../src/widgets/two-ways/roles.ts';

const at = (state: Partial<WaysGivens>) => {
  const model = makeTwoWays();
  model.apply(state);
  return model;
};
const task = (id: string) => {
  const found = tasks.find((one) => one.id === id);
  if (!found) throw new Error(`There is no task ${id}.`);
  return found;
};
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
    // The words after it speak of 33 %.
    expect(met).toContain(33);
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
    const { hand } = mechanicalRoles(at({ fault: 'misSet' }));
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
        expect(mine.clutch).toBeCloseTo(got.circuits.forward.pressure_kPa, 6);
      }
  });
  it('fills later and holds less the more it is shut', () => {
    const all = [100, 70, 40, 20, 10].map((feed) => at({ fault: 'misSet', feed }).hot.value);
    all.slice(1).forEach((one, i) => {
      expect(one.clutch).toBeLessThan(all[i]?.clutch ?? 0);
      expect(one.stopped ?? 99).toBeGreaterThan(all[i]?.stopped ?? 0);
    });
  });
  it('spares the cold clutch long after the hot one has gone', () => {
    const model = at({ fault: 'misSet', feed: 30 });
    expect(model.hot.value.clutch).toBeLessThan(needed['take-off'].pressure);
    expect(model.cold.value.clutch).toBeGreaterThan(needed['take-off'].pressure);
    expect(model.consequence(30, HOT_C).clutch).toBe(model.hot.value.clutch);
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
          for (const { clutch, stopped } of [model.cold.value, model.hot.value]) {
            expect(Number.isFinite(clutch) && clutch >= 0).toBe(true);
            if (stopped !== null) expect(Number.isFinite(stopped)).toBe(true);
          }
          const sentences = [
            ...allOf(electronicRoles(model, 'us')),
            ...allOf(mechanicalRoles(model)),
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
  it('prints every sentence in the reader’s units', () => {
    for (const one of tasks.flatMap(({ words, hint, after }) => [words, hint, after])) {
      expect(textFor(one, 'us')).not.toMatch(/°C|kPa|NaN|undefined/);
      expect(textFor(one, 'si')).not.toMatch(/°F|psi|NaN|undefined/);
    }
  });
});
