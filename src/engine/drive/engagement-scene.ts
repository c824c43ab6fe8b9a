import { feedFlow, leakFlow } from '../circuit/clutch-circuit.ts';
import { fillPressure } from '../clutch/fill.ts';
import { rotatingPistonForce } from '../clutch/rotating-piston.ts';
import { clutchTorque } from '../clutch/torque.ts';
import { gapFlowRate } from '../flow/gap.ts';
import { holeFlow } from '../flow/hole.ts';
import type { FluidState } from '../fluid/fluid.ts';
import { drivetrain, gearbox } from '../gearbox.ts';
import type { Circuit, Plant } from '../gearbox.ts';
import { findRoot } from '../numerics/find-root.ts';
import { pumpIntake, pumpSlipPerPascal } from '../pump/pump.ts';
import { RAD_S_PER_RPM, converterTorqueRatio, impellerTorque } from './converter.ts';
import { engineTorque } from './engine-torque.ts';
import {
  COMMAND_FACTOR,
  COMMAND_LEAST,
  COMMAND_MOST,
  LINE_ABOVE_CLUTCH,
  LINE_FLOOR,
  SLIP_SCALE,
  throttleAt,
} from './engagement-story.ts';
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
  fullPressure = false;
  held = true;
  circuit: Circuit;
  ratio: number;
  readonly plant: Plant;
  readonly fluid: FluidState;
  readonly story: EngagementStory;
  /** Metres of road for each radian of output shaft. */
  readonly metresPerOutput = drivetrain.wheelRadius / drivetrain.finalDrive;
  private readonly slipPerPascal: number;

  constructor(plant: Plant, fluid: FluidState, story: EngagementStory, circuit: Circuit) {
    this.plant = plant;
    this.fluid = fluid;
    this.story = story;
    this.circuit = circuit;
    this.ratio = drivetrain.ratios[circuit];
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
    const { rotating, strokeVolume } = this.plant.clutch;
    if (rotating === undefined || (state[VOLUME] as number) < strokeVolume) return 0;
    return rotatingPistonForce(rotating, this.fluid.density, state[TURBINE] as number);
  }

  /** Clutch and line command [Pa] as the controller works them out; it believes in a healthy clutch. */
  private clutchCommandFor(impeller: number): number {
    if (!this.selected || this.vented) return 0;
    if (this.fullPressure) return COMMAND_MOST;
    const { faces, meanRadius, friction, springForce, area } = gearbox.clutch;
    const torque = drivetrain.stallTorqueRatio * impeller;
    const needed = (torque / (friction * faces * meanRadius) + springForce) / area;
    return Math.min(COMMAND_MOST, Math.max(COMMAND_LEAST, COMMAND_FACTOR * needed));
  }

  /** Line pressure the pump can keep while the clutch takes what its valve lets through [Pa]. */
  private linePressureFor(
    engine: number,
    clutch: number,
    clutchCommand: number,
    lineCommand: number,
  ): number {
    const { plant, fluid } = this;
    const intake = pumpIntake(plant.pump, engine / (2 * Math.PI), fluid.dynamic);
    const spare = (line: number): number =>
      intake -
      this.slipPerPascal * line -
      gapFlowRate(plant.lineClearances, line, fluid.density, fluid.dynamic) -
      gapFlowRate(plant.regulatorBore, line, fluid.density, fluid.dynamic) -
      feedFlow(plant, { line, clutch, command: clutchCommand }, fluid);
    const atCommand = spare(lineCommand);
    if (atCommand >= 0) return lineCommand;
    return findRoot(spare, 0, lineCommand, intake, atCommand).root;
  }

  /** Fills `out` with pressures and torques at a moment and returns the net flow into the clutch [m3/s]. */
  at(time: number, state: Float64Array, out: Moment): number {
    const { plant, fluid } = this;
    const engine = state[ENGINE] as number;
    const turbine = state[TURBINE] as number;
    const impeller = impellerTorque(drivetrain, engine, turbine);
    const pressure = fillPressure(plant.clutch, state[VOLUME] as number);
    // The raise works on the clutch command; the line follows by its own rule, so that the 200 kPa between them stay.
    const clutchCommand = Math.min(COMMAND_MOST, this.raise * this.clutchCommandFor(impeller));
    const lineCommand =
      Math.max(LINE_FLOOR, clutchCommand + LINE_ABOVE_CLUTCH) * plant.lineCommandFactor;
    out.clutchCommand = clutchCommand;
    out.lineCommand = lineCommand;
    out.clutchPressure = pressure;
    out.linePressure = this.linePressureFor(engine, pressure, out.clutchCommand, lineCommand);
    out.capacity = clutchTorque(plant.clutch, pressure, this.head(state));
    out.clutchTorque = out.capacity * Math.tanh(this.slip(state) / SLIP_SCALE);
    out.impellerTorque = impeller;
    out.turbineTorque =
      impeller === 0 ? 0 : impeller * converterTorqueRatio(drivetrain, turbine / engine);
    out.engineTorque = engineTorque(
      engine / RAD_S_PER_RPM,
      throttleAt(this.story, time),
      drivetrain.idleRpm,
    );
    const feed = feedFlow(
      plant,
      { line: out.linePressure, clutch: pressure, command: out.clutchCommand },
      fluid,
    );
    const leak = leakFlow(plant.leaks[this.circuit], pressure, fluid);
    // A vented clutch drains through its own valve, taken to be as wide as the healthy feed.
    const vent = this.vented
      ? holeFlow(gearbox.feedArea, pressure, fluid.density, fluid.kinematic)
      : 0;
    return feed - leak - vent;
  }

  private readonly scratch: Moment = emptyMoment();

  /** dy/dt of the four states. */
  readonly rhs = (time: number, state: Float64Array, out: Float64Array): void => {
    const now = this.scratch;
    out[VOLUME] = this.at(time, state, now);
    out[ENGINE] = (now.engineTorque - now.impellerTorque) / drivetrain.engineInertia;
    out[TURBINE] = (now.turbineTorque - now.clutchTorque) / drivetrain.turbineInertia;
    out[VEHICLE] = this.acceleration(now.clutchTorque, state[VEHICLE] as number);
  };

  private acceleration(torque: number, speed: number): number {
    if (this.held) return 0;
    const force = (torque * this.ratio) / this.metresPerOutput - drivetrain.drag;
    // Drag stops a vehicle; it never drives one backward.
    return speed <= 0 && force < 0 ? 0 : force / drivetrain.mass;
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
