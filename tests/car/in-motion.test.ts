import { describe, expect, it } from 'vitest';
import { makeCar, oneFault, soundCar } from '../../src/car/car.ts';
import { engage } from '../../src/car/engage.ts';
import { inMotion } from '../../src/car/in-motion.ts';
import { FAULT_IDS } from '../../src/engine/index.ts';

/** The row of a trace with a row every 10 ms. */
const row = (time: number): number => Math.round(time * 100);

describe('an engagement as things that move', () => {
  // Continuity: what came in and did not leak out fills the clutch. By trapezoids of 10 ms, so 3 %.
  it.each([...FAULT_IDS, null])('the clutch holds what was fed and not lost, %s', (fault) => {
    const car = fault === null ? soundCar : makeCar({ faults: oneFault(fault, 40) });
    let filled = 0;
    for (const tempC of [20, 60, 100]) {
      const solved = engage(car, { tempC });
      const { fedL, leakedL } = inMotion(car, solved, { tempC, circuit: 'forward' });
      const full = solved.events.find(({ event }) => event === 'clutch filled')?.time;
      if (full === undefined) continue;
      filled += 1;
      const inClutch = (fedL[row(full)] ?? 0) - (leakedL[row(full)] ?? 0);
      const stroke = car.plant.clutches.forward.strokeVolume * 1000;
      expect(inClutch / stroke, `${tempC} C`).toBeGreaterThan(0.97);
      expect(inClutch / stroke, `${tempC} C`).toBeLessThan(1.03);
      // And pressed: by as much more as it gives under what its spring leaves (a vented one empties by another way).
      if (solved.events.some(({ event }) => event === 'clutch vented')) continue;
      const { springForce, area, compliance } = car.plant.clutches.forward;
      const pressed = (solved.trace.clutchPressure.at(-1) ?? 0) - springForce / area;
      const holds = stroke + compliance * pressed * 1000;
      const atEnd = (fedL.at(-1) ?? 0) - (leakedL.at(-1) ?? 0);
      expect(atEnd / holds, `${tempC} C, at the end`).toBeGreaterThan(0.97);
      expect(atEnd / holds, `${tempC} C, at the end`).toBeLessThan(1.03);
    }
    expect(filled, 'nothing was looked at').toBeGreaterThan(0);
  });

  it('turns by speed times time', () => {
    const solved = engage(soundCar, { tempC: 100 });
    const { engineTurns, turbineTurns, outputTurns } = inMotion(soundCar, solved, {
      tempC: 100,
      circuit: 'forward',
    });
    // Half a second in Park at 712 rpm: 12 above idle, where the governor meets friction (model.md).
    expect(engineTurns[row(0.5)]).toBeCloseTo((712 / 60) * 0.5, 3);
    expect(turbineTurns[row(0.5)]).toBeCloseTo((712 / 60) * 0.5, 3);
    expect(outputTurns[row(3)]).toBe(0);
    // Standing, a turbine creeps by a few rpm and no more.
    expect((turbineTurns[row(3)] ?? 0) - (turbineTurns[row(2)] ?? 0)).toBeLessThan(0.5);
  });
});
