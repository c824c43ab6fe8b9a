import { describe, expect, it } from 'vitest';
import {
  clutchTorque,
  holeFlow,
  RAD_S_PER_RPM,
  densityRatio,
  fluidAt,
  fluidClasses,
  makeFluid,
  throttleAt,
  throttleRateAt,
  training,
  trainingStory,
} from '../../../src/engine/index.ts';
import { EngagementScene } from '../../../src/engine/drive/engagement-scene.ts';

const fluid = makeFluid(fluidClasses['low-viscosity']);
const scene = new EngagementScene({
  plant: training,
  fluid: fluidAt(fluid, 80),
  swell: densityRatio(fluid, 20, 80),
  story: trainingStory,
  circuit: 'forward',
});
scene.selected = true;
scene.held = false;

/** A derivative by its definition: the law a thousandth of a second either side. */
function differenced(time: number, state: Float64Array): number[] {
  const [before, after] = [new Float64Array(4), new Float64Array(4)];
  const h = 1e-3;
  scene.rhs(time - h, state, before);
  scene.rhs(time + h, state, after);
  return Array.from(after, (value, i) => (value - (before[i] ?? Number.NaN)) / (2 * h));
}

describe('what time alone changes', () => {
  it.each([0.2, 1, 2.9, 3.1, 4.5, 5.9, 6.1, 6.9])(
    'at %d s is the derivative of the law',
    (time) => {
      for (const rpm of [720, 1500, 3000, 5600, 6400]) {
        const state = Float64Array.of(rpm * RAD_S_PER_RPM, 0.6 * rpm * RAD_S_PER_RPM, 3.01e-5, 2);
        const out = new Float64Array(4).fill(Number.NaN);
        scene.timeSlope(time, state, out);
        differenced(time, state).forEach((slope, i) => {
          expect(Math.abs((out[i] ?? Number.NaN) - slope)).toBeLessThan(
            1e-6 * Math.max(1, Math.abs(slope)),
          );
        });
      }
    },
  );
  it('at a corner is what holds after it', () => {
    expect(throttleRateAt(trainingStory, 3)).toBe(0.2);
    expect(throttleRateAt(trainingStory, 6)).toBe(0);
    expect(throttleAt(trainingStory, 6)).toBeCloseTo(0.6, 12);
  });
});

describe('what is commanded, by the equations of the model (section 7)', () => {
  const made = () =>
    new EngagementScene({
      plant: training,
      fluid: fluidAt(fluid, 80),
      swell: densityRatio(fluid, 20, 80),
      story: trainingStory,
      circuit: 'forward',
    });
  const state = (engine: number, turbine = 0, volume = 3.01e-5, vehicle = 0) =>
    Float64Array.of(engine * RAD_S_PER_RPM, turbine * RAD_S_PER_RPM, volume, vehicle);
  const moment = (change: Partial<EngagementScene>, at = state(700)) => {
    const one = Object.assign(made(), { selected: true, held: true }, change);
    const out = {} as Parameters<EngagementScene['at']>[2];
    const net = one.at(1, at, out);
    return { ...out, net };
  };
  const { commands, clutches, drive } = training;
  const clutch = clutches.forward;
  /** The pressure that holds the torque at stall, times its margin, within its ends [Pa]. */
  const asked = (impeller: number): number => {
    const hold =
      (drive.stallTorqueRatio * impeller) / (clutch.friction * clutch.faces * clutch.meanRadius);
    const needed = (hold + clutch.springForce) / clutch.area;
    return Math.min(commands.clutchMost, Math.max(commands.clutchLeast, commands.margin * needed));
  };

  it('nothing before a range is selected and once it is vented, and the line keeps its least', () => {
    for (const change of [{ selected: false }, { vented: true }]) {
      const { clutchCommand, lineCommand } = moment(change);
      expect(clutchCommand).toBe(0);
      expect(lineCommand).toBe(Math.max(commands.lineLeast, commands.lineLead));
    }
  });
  it('what the torque at stall needs, with the line its lead above', () => {
    for (const rpm of [700, 1500, 2200]) {
      const now = moment({}, state(rpm));
      expect(now.clutchCommand).toBeCloseTo(asked(now.impellerTorque), 3);
      expect(now.lineCommand).toBeCloseTo(
        Math.max(commands.lineLeast, now.clutchCommand + commands.lineLead),
        3,
      );
    }
    expect(moment({}, state(2200)).clutchCommand).toBeGreaterThan(
      moment({}, state(700)).clutchCommand,
    );
  });
  it('raised within the most, Reverse boosted above it, and full where a gear is held', () => {
    const plain = moment({}, state(1500)).clutchCommand;
    expect(moment({ raise: 1.1 }, state(1500)).clutchCommand).toBeCloseTo(
      Math.min(commands.clutchMost, 1.1 * plain),
      3,
    );
    expect(moment({ raise: 50 }, state(1500)).clutchCommand).toBe(commands.clutchMost);
    expect(moment({ fullPressure: true }, state(700)).clutchCommand).toBe(commands.clutchMost);
  });
  it('a vented clutch drains through a valve as wide as the feed, besides what it leaks', () => {
    const [open, shut] = [moment({ vented: true }), moment({ selected: false })];
    const { density, kinematic } = fluidAt(fluid, 80);
    expect(open.clutchPressure).toBeGreaterThan(0);
    expect(shut.net - open.net).toBeCloseTo(
      holeFlow(training.healthy.feedArea, open.clutchPressure, density, kinematic),
      12,
    );
  });
  it('capacity is the torque at the pressure; the rest is torque over inertia', () => {
    const now = moment({ held: false }, state(1500, 900, 3.01e-5, 2));
    expect(now.capacity).toBeCloseTo(clutchTorque(clutch, now.clutchPressure), 6);
    const out = new Float64Array(4);
    const one = Object.assign(made(), { selected: true, held: false });
    one.rhs(1, state(1500, 900, 3.01e-5, 2), out);
    expect(out[1]).toBeCloseTo((now.turbineTorque - now.clutchTorque) / drive.turbineInertia, 9);
    expect(out[0]).toBeCloseTo((now.engineTorque - now.impellerTorque) / drive.engineInertia, 9);
  });
  it('a vehicle that rolls is slowed by its drag, one that stands is not driven backward, one held stays', () => {
    const speeding = (change: Partial<EngagementScene>, vehicle: number): number => {
      const one = Object.assign(made(), { selected: false }, change);
      const out = new Float64Array(4);
      one.rhs(1, state(700, 690, 0, vehicle), out);
      return out[3] ?? Number.NaN;
    };
    expect(speeding({ held: false }, 2)).toBeCloseTo(-drive.drag / drive.mass, 12);
    expect(speeding({ held: false }, 0)).toBe(0);
    expect(speeding({ held: true }, 2)).toBe(0);
  });
});

describe('the story', () => {
  it('the driver lifts off at its end', () => {
    const { end, throttleMost, brakeOff } = trainingStory;
    expect(throttleAt(trainingStory, end)).toBe(throttleMost);
    expect(throttleAt(trainingStory, end + 1e-9)).toBe(0);
    expect(throttleAt(trainingStory, brakeOff - 1)).toBe(0);
    expect(throttleRateAt(trainingStory, end + 1)).toBe(0);
  });
});
