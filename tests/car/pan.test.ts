import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  GEARS_MM,
  levelOf,
  MARK_MM,
  MIDDLE_MM,
  pickUpOf,
  PLACES,
  swollenBy,
  WINDOW_C,
  type Fill,
} from '../../src/car/pan.ts';
import { answer } from '../../src/solve/answer.ts';

const SEED = 20_261_129;
const fill = (given: Partial<Fill>): Fill => ({
  offL: 0,
  tempC: 20,
  engineRpm: 700,
  place: 'flat',
  ...given,
});

describe('how much the fill swells', () => {
  // ASTM D1250-04 for lubricating oils, worked by hand for 845 kg/m3 at 15 °C: a = 0.6278 / 845 = 7.4296e-4 /K, and
  // rho = 845 exp(-a d (1 + 0.8 a d)): 841.86 at 20 °C (d = 5), 806.88 at 75 (d = 60), 790.76 at 100 (d = 85).
  it.each([
    [75, 8 * (841.86 / 806.88 - 1)],
    [100, 8 * (841.86 / 790.76 - 1)],
  ])('to %d °C as the standard says', (tempC, litres) => {
    expect(swollenBy(tempC)).toBeCloseTo(litres, 2);
  });

  // Incropera & DeWitt, table A.5, unused engine oil (printed): 884.1 kg/m3 at 300 K and 836.0 at 380 K, so eighty degrees
  // swell it by 5.75 %. That oil is heavier (a = 0.6278 / 890), and expansion goes as one over density: 845 / 890 of ours.
  it('by about what a measured oil of another weight does', () => {
    const measured = 884.1 / 836 - 1;
    const ours = swollenBy(100) / 8;
    expect(ours / measured).toBeGreaterThan(1);
    expect(ours / measured).toBeLessThan(1.2);
  });

  // Handbook rule, from memory: mineral oil grows by 0.7 parts in a thousand with each degree, 0.6 to 0.9 by its weight.
  it('by six to nine parts in ten thousand for each degree', () => {
    const each = swollenBy(100) / 8 / 80;
    expect(each).toBeGreaterThan(6e-4);
    expect(each).toBeLessThan(9e-4);
  });
});

describe('the level, by hand', () => {
  // Spare 0.5 L, less 0.25 L for each 1000 rpm, plus the swelling of 8 L; one litre in 500 cm2 is 20 mm.
  it('of a right fill, cold at idle: 0.5 - 0.175 = 0.325 L, which is 6.5 mm', () => {
    expect(levelOf(fill({})).middleMm).toBeCloseTo(6.5, 9);
  });
  it('has its middle where the right fill stands in the window', () => {
    expect(levelOf(fill({ tempC: WINDOW_C.middle })).stickMm).toBeCloseTo(0, 9);
    for (const tempC of [WINDOW_C.from, WINDOW_C.to]) {
      expect(Math.abs(levelOf(fill({ tempC })).stickMm)).toBeLessThan(MARK_MM);
    }
  });
  it('reads the same fill below MIN cold, and 0.6 L more there at MAX', () => {
    expect(levelOf(fill({})).stickMm).toBeLessThan(-MARK_MM);
    expect(levelOf(fill({ offL: 0.6 })).stickMm).toBeCloseTo(MARK_MM, 0);
  });
  it('never brings a right fill to the gears at idle, and that one hot', () => {
    for (let tempC = -30; tempC <= 140; tempC += 5) {
      expect(levelOf(fill({ tempC })).gearsDip).toBe(false);
    }
    expect(levelOf(fill({ offL: 0.6, tempC: 100 })).gearsDip).toBe(true);
    expect(GEARS_MM).toBeGreaterThan(MIDDLE_MM + MARK_MM);
  });
  // The surface of a fluid at rest in a car that bends at 0.3 g slopes by 0.3: 25 mm aside it stands 7.5 mm lower, and as
  // much higher on the other side.
  it('tips in a bend by 0.3 of the distance', () => {
    const { middleMm, mouthMm, stickMm } = levelOf(fill({ tempC: 75, place: 'bend' }));
    expect(middleMm - mouthMm).toBeCloseTo(7.5, 9);
    expect(stickMm).toBeCloseTo(7.5, 9);
  });
});

describe('what the pick-up gets', () => {
  it('on the flat is what the command line says of low fluid, air seen by the pump’s flow and line', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(0, 0.6, 1.2, 1.8, 2.4, 3),
        fc.constantFrom(-10, 20, 60, 100),
        fc.constantFrom(700, 1500, 3000),
        (short, tempC, engineRpm) => {
          const here = pickUpOf(fill({ offL: -short, tempC, engineRpm }));
          const got = answer({
            kind: 'steady',
            temperature_C: tempC,
            engine_rpm: engineRpm,
            line_kPa: 600,
            clutch_kPa: 400,
            applied: ['forward'],
            faults: { lowFluid: short / 3 },
          }) as unknown as { line_kPa: number };
          expect(here.lineKpa).toBeCloseTo(got.line_kPa, 6);
        },
      ),
      { seed: SEED, numRuns: 60 },
    );
  });
  it('is air where the level at the mouth is below it, three tenths for each litre, and nowhere else', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -2.5, max: 1, noNaN: true }),
        fc.double({ min: -30, max: 140, noNaN: true }),
        fc.constantFrom(600, 1500, 3000),
        fc.constantFrom(...PLACES),
        (offL, tempC, engineRpm, place) => {
          const given = { offL, tempC, engineRpm, place };
          const belowL = -levelOf(given).mouthMm / 20;
          expect(pickUpOf(given).air).toBeCloseTo(Math.min(0.9, Math.max(0, 0.3 * belowL)), 9);
        },
      ),
      { seed: SEED, numRuns: 200 },
    );
  });
  it('is more air on a hill than on the flat, and more in a bend', () => {
    const air = PLACES.map((place) => pickUpOf(fill({ offL: -0.6, tempC: 75, place })).air);
    expect(air).toEqual([...air].sort((a, b) => a - b));
    expect(new Set(air).size).toBe(PLACES.length);
  });
});
