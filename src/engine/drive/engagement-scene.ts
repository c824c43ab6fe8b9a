import { feedFlow, leakFlow } from '../circuit/clutch-circuit.ts';
import { fillPressure } from '../clutch/fill.ts';
import { rotatingPistonForce } from '../clutch/rotating-piston.ts';
import { clutchTorque } from '../clutch/torque.ts';
import { gapFlowRate } from '../flow/gap.ts';
import { holeFlow } from '../flow/hole.ts';
import type { FluidState } from '../fluid/fluid.ts';
import type { Circuit } from '../transmission/circuits.ts';
import type { Plant } from '../transmission/plant.ts';
import { findRoot } from '../numerics/find-root.ts';
import { airDrawn } from '../pump/low-level.ts';
import { pumpIntake, pumpSlipPerPascal } from '../pump/pump.ts';
import { RAD_S_PER_RPM, converterTorqueRatio, impellerTorque } from './converter.ts';
import { engineTorque } from './engine-torque.ts';
import { SLIP_SCALE, throttleAt, throttleRateAt } from './engagement-story.ts';
import type { EngagementStory } from './engagement-story.ts';

/** Places of the four states: engine and turbine speed [rad/s], fluid in the clutch [m3], vehicle speed [m/s]. */
export const ENGINE = 0;
/** Place of turbine speed [rad/s]. */
export const TURBINE = 1;
/** Place of the fluid in the clutch [m3]. */
export const VOLUME = 2;
/** Place of vehicle speed [m/s]. */
export const VEHICLE = 3;

/** Pressures and torques at one moment, for the trace and for the energy balance. */
export interface Moment {
  clutchPressure: number;
  clutchCommand: number;
  linePressure: number;
  lineCommand: number;
  capacity: number;
  clutchTorque: number;
  impellerTorque: number;
  turbineTorque: number;
  engineTorque: number;
}

/**
 * The system between two changes of law: what is selected, vented, raised, held. The marcher changes these fields
 * only at the ends of stretches, so that inside one the right-hand side is smooth but for known corners.
 */
export class EngagementScene {
  selected = false;
  vented = false;
  /** Multiplies the clutch command; above 1 after the first failed ratio check. */
  raise = 1;
  /** A default gear is held at the most that may be commanded. */
  fullPressure = false;
  held = true;
  circuit: Circuit;
  ratio: number;
  readonly plant: Plant;
  readonly fluid: FluidState;
  readonly story: EngagementStory;
  /** Density at 20 degC over density now: by so much the fluid has swollen. */
  readonly swell: number;
  /** Metres of road for each radian of output shaft. */
  readonly metresPerOutput: number;
  private readonly slipPerPascal: number;
  private readonly boost: number;

  constructor(given: {
    /** As it is at the temperature of the fluid. */
    readonly plant: Plant;
    readonly fluid: FluidState;
    readonly swell: number;
    readonly story: EngagementStory;
    readonly circuit: Circuit;
  }) {
    const { plant, fluid, circuit } = given;
    this.plant = plant;
    this.fluid = fluid;
    this.swell = given.swell;
    this.story = given.story;
    this.circuit = circuit;
    this.ratio = plant.drive.ratios[circuit];
    this.metresPerOutput = plant.drive.wheelRadius / plant.drive.finalDrive;
    this.boost = circuit === 'reverse' ? plant.commands.reverseFactor : 1;
    this.slipPerPascal = pumpSlipPerPascal(plant.pump, fluid.dynamic);
  }

  /** Slip at the clutch as the turbine sees it [rad/s]. */
  slip(state: Float64Array): number {
    return (
      (state[TURBINE] as number) - (this.ratio * (state[VEHICLE] as number)) / this.metresPerOutput
    );
  }

  /**
   * Force of the fluid that spins behind a rotating piston [N]; the clutch drum turns with the turbine. Counted once the
   * clutch is full: how it pulls the piston along while it fills is left out.
   */
  private head(state: Float64Array): number {
    const { rotating, strokeVolume } = this.plant.clutches[this.circuit];
    if (rotating === undefined || (state[VOLUME] as number) < strokeVolume) return 0;
    return rotatingPistonForce(rotating, this.fluid.density, state[TURBINE] as number);
  }

  /**
   * Clutch command [Pa] as the controller works it out; it believes in a healthy clutch. The raise works within the most
   * that may be commanded, and Reverse is boosted above that.
   */
  private clutchCommandFor(impeller: number): number {
    if (!this.selected || this.vented) return 0;
    const { margin, clutchLeast, clutchMost } = this.plant.commands;
    if (this.fullPressure) return clutchMost;
    const { faces, meanRadius, friction, springForce, area } =
      this.plant.healthy.clutches[this.circuit];
    const torque = this.plant.drive.stallTorqueRatio * impeller;
    const needed = (torque / (friction * faces * meanRadius) + springForce) / area;
    const asked = Math.min(clutchMost, Math.max(clutchLeast, margin * needed));
    return Math.min(clutchMost, this.raise * asked) * this.boost;
  }

  /** Line pressure the pump can keep while the clutch takes what its valve lets through [Pa]. */
  private linePressureFor(
    engine: number,
    clutch: number,
    held: number,
    lineCommand: number,
  ): number {
    const { plant, fluid } = this;
    const air = airDrawn(plant.sump, plant.missingFluid, {
      engineRpm: engine / RAD_S_PER_RPM,
      swell: this.swell,
    });
    const intake = pumpIntake(plant.pump, engine / (2 * Math.PI), fluid.dynamic, air);
    const spare = (line: number): number =>
      intake -
      this.slipPerPascal * line -
      gapFlowRate(plant.lineClearances, line, fluid.density, fluid.dynamic) -
      holeFlow(plant.bleedArea, line, fluid.density, fluid.kinematic) -
      gapFlowRate(plant.regulatorBore, line, fluid.density, fluid.dynamic) -
      feedFlow(plant.feed, { line, clutch, command: held }, fluid);
    const atCommand = spare(lineCommand);
    if (atCommand >= 0) return lineCommand;
    return findRoot(spare, 0, lineCommand, intake, atCommand).root;
  }

  /** Fills `out` with pressures and torques at a moment and returns the net flow into the clutch [m3/s]. */
  at(time: number, state: Float64Array, out: Moment): number {
    const { plant, fluid } = this;
    const { commands, drive } = plant;
    const own = plant.clutches[this.circuit];
    const engine = state[ENGINE] as number;
    const turbine = state[TURBINE] as number;
    const impeller = impellerTorque(drive, engine, turbine);
    const pressure = fillPressure(own, state[VOLUME] as number);
    const clutchCommand = this.clutchCommandFor(impeller);
    // What the valve really holds of it, and the line by its own rule: always its lead above the clutch command.
    const held = clutchCommand * plant.valveHolds[this.circuit];
    const lineCommand =
      Math.max(commands.lineLeast, clutchCommand + commands.lineLead) * plant.lineCommandFactor;
    out.clutchCommand = clutchCommand;
    out.lineCommand = lineCommand;
    out.clutchPressure = pressure;
    out.linePressure = this.linePressureFor(engine, pressure, held, lineCommand);
    out.capacity = clutchTorque(own, pressure, this.head(state));
    out.clutchTorque = out.capacity * Math.tanh(this.slip(state) / SLIP_SCALE);
    out.impellerTorque = impeller;
    out.turbineTorque =
      impeller === 0 ? 0 : impeller * converterTorqueRatio(drive, turbine / engine);
    out.engineTorque = engineTorque(
      engine / RAD_S_PER_RPM,
      throttleAt(this.story, time),
      drive.idleRpm,
    );
    const feed = feedFlow(
      plant.feed,
      { line: out.linePressure, clutch: pressure, command: held },
      fluid,
    );
    const leak = leakFlow(plant.leaks[this.circuit], pressure, fluid);
    // A vented clutch drains through its own valve, taken to be as wide as the healthy feed.
    const vent = this.vented
      ? holeFlow(plant.healthy.feedArea, pressure, fluid.density, fluid.kinematic)
      : 0;
    return feed - leak - vent;
  }

  private readonly scratch: Moment = emptyMoment();

  /** dy/dt of the four states. */
  readonly rhs = (time: number, state: Float64Array, out: Float64Array): void => {
    const now = this.scratch;
    const { drive } = this.plant;
    out[VOLUME] = this.at(time, state, now);
    out[ENGINE] = (now.engineTorque - now.impellerTorque) / drive.engineInertia;
    out[TURBINE] = (now.turbineTorque - now.clutchTorque) / drive.turbineInertia;
    out[VEHICLE] = this.acceleration(now.clutchTorque, state[VEHICLE] as number);
  };

  /** What time alone changes of it: the throttle, and with it the engine's torque, which is linear in the throttle. */
  readonly timeSlope = (time: number, state: Float64Array, out: Float64Array): void => {
    out.fill(0);
    const rate = throttleRateAt(this.story, time);
    if (rate === 0) return;
    const { idleRpm, engineInertia } = this.plant.drive;
    const rpm = (state[ENGINE] as number) / RAD_S_PER_RPM;
    const gain = engineTorque(rpm, 1, idleRpm) - engineTorque(rpm, 0, idleRpm);
    out[ENGINE] = (rate * gain) / engineInertia;
  };

  private acceleration(torque: number, speed: number): number {
    if (this.held) return 0;
    const { drag, mass } = this.plant.drive;
    const force = (torque * this.ratio) / this.metresPerOutput - drag;
    // Drag stops a vehicle; it never drives one backward.
    return speed <= 0 && force < 0 ? 0 : force / mass;
  }
}

/**
 * A moment to be filled in, so that the inner loop makes no objects.
 *
 * @returns pressures [Pa] and torques [N m], all zero
 * Range: none.
 * Source: bookkeeping, no physics.
 * @example
 * Object.keys(emptyMoment()).length // 9
 */
export function emptyMoment(): Moment {
  return {
    clutchPressure: 0,
    clutchCommand: 0,
    linePressure: 0,
    lineCommand: 0,
    capacity: 0,
    clutchTorque: 0,
    impellerTorque: 0,
    turbineTorque: 0,
    engineTorque: 0,
  };
}
