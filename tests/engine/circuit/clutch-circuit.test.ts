import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { feedFlow, fluidAt, training } from '../../../src/engine/index.ts';
import { SEED, even, fluids, soundPlants, tempsC } from '../arbitraries.ts';

const runs = { seed: SEED, numRuns: 1000 };

describe('the feed of a clutch', () => {
  it('obeys its own law: what the passage and the hole lose add up to the drop', () => {
    let open = 0;
    fc.assert(
      fc.property(
        soundPlants,
        fluids,
        tempsC,
        even(0, 3e6),
        even(0, 1),
        even(0, 3e6),
        (plant, fluid, tempC, line, share, command) => {
          const state = fluidAt(fluid, tempC);
          const { area, passage, band } = plant.feed;
          const clutch = line * share;
          const flow = feedFlow(plant.feed, { line, clutch, command }, state);
          const x = Math.min(1, Math.max(0, (command - clutch) / band));
          if (x === 0 || line === clutch) {
            expect(flow).toBe(0);
            return;
          }
          open += 1;
          // As printed in the paper, section 4: pl - pc = Rp mu Q + rho/2 (Q / (Cd x A))^2.
          const lost =
            passage * state.dynamic * flow + (state.density / 2) * (flow / (0.65 * x * area)) ** 2;
          expect(Math.abs(lost - (line - clutch))).toBeLessThanOrEqual(1e-9 * line);
        },
      ),
      runs,
    );
    expect(open).toBeGreaterThan(200);
  });

  it('passes nothing back, whatever is above what', () => {
    const state = fluidAt(
      { kv40CSt: 30, kv100CSt: 6, density15: 850, line: { a: 8.4, b: 3.3 } },
      60,
    );
    expect(feedFlow(training.feed, { line: 3e5, clutch: 4e5, command: 5e5 }, state)).toBe(0);
    expect(feedFlow(training.feed, { line: 6e5, clutch: 4e5, command: 4e5 }, state)).toBe(0);
    expect(feedFlow(training.feed, { line: 6e5, clutch: 5e5, command: 4e5 }, state)).toBe(0);
  });

  it('without its passage is the plain hole, and without its hole the plain pipe', () => {
    const state = { density: 800, dynamic: 0.02, kinematic: 0.02 / 800 };
    const at = { line: 6e5, clutch: 2e5, command: 4e5 };
    const bare = { ...training.feed, passage: 0 };
    // Orifice equation, Cd 0.65, by hand.
    const orifice = 0.65 * training.feed.area * Math.sqrt((2 * 4e5) / 800);
    expect(feedFlow(bare, at, state) / orifice).toBeCloseTo(1, 12);
    const wide = { ...training.feed, area: 1 };
    expect(feedFlow(wide, at, state) / (4e5 / (training.feed.passage * 0.02))).toBeCloseTo(1, 6);
  });

  it('frost slows it: at -20 C it lets in two fifths of what it does at 60 C', () => {
    // The low-viscosity class by ASTM D341 and API MPMS 11.1, and both flows by the series law, in another program.
    const at = (dynamic: number, density: number) =>
      feedFlow(
        training.feed,
        { line: 6e5, clutch: 1e5, command: 4e5 },
        { density, dynamic, kinematic: dynamic / density },
      );
    expect(at(0.885051, 866.792)).toBeCloseTo(2.40703e-5, 9);
    expect(at(0.0125279, 816.486)).toBeCloseTo(6.34627e-5, 9);
  });
});
