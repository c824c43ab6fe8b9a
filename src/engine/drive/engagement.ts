import { FIRST_FILL_SHARE } from '../clutch/fill.ts';
import { exactSensor, sensorReading } from '../controller/sensor.ts';
import type { SpeedSensor } from '../controller/sensor.ts';
import { illustrativeSettings } from '../controller/settings.ts';
import { controllerAtRest, controllerCycle, rangeSelected } from '../controller/state-machine.ts';
import type {
  ControllerContext,
  ControllerMemory,
  ControllerState,
} from '../controller/state-machine.ts';
import { fluidInPlant } from '../circuit/steady-state.ts';
import { requireInRange } from '../error.ts';
import { densityRatio, fluidAt } from '../fluid/fluid.ts';
import { atTemperature } from '../transmission/at-temperature.ts';
import type { Circuit } from '../transmission/circuits.ts';
import { findRoot } from '../numerics/find-root.ts';
import { firstReached } from '../numerics/first-reached.ts';
import { Stepper, insideStep } from '../numerics/rosenbrock.ts';
import type { Step, Work } from '../numerics/rosenbrock.ts';
import { RAD_S_PER_RPM } from './converter.ts';
import {
  ENGINE,
  EngagementScene,
  TURBINE,
  VEHICLE,
  VOLUME,
  emptyMoment,
} from './engagement-scene.ts';
import {
  ENGAGED_SLIP_RPM,
  STOPPED_RPM,
  throttleAt,
  throttleFullAt,
  trainingStory,
} from './engagement-story.ts';
import type { EngagementStory } from './engagement-story.ts';
import { TRACE_COLUMNS } from './engagement-types.ts';
import type {
  DriveRange,
  Engagement,
  EngagementEvent,
  EngagementEventName,
  EngagementRequest,
  EngagementTrace,
} from './engagement-types.ts';

/**
 * Error control: a thousandth of a percent, so that a limit which slip hovers near is met in the same cycle; and for
 * each state what nobody could read off a gauge.
 */
const RELATIVE = 1e-5;
const ABSOLUTE = Float64Array.from([1e-2, 1e-2, 1e-10, 1e-4]);
/** No step skips the shortest thing the story can hold. */
const MAX_STEP = 0.1;
/** Twenty times the work of the hardest case met in tests; beyond it the solve reports failure. */
export const MOST_STEPS = 20000;
/** How finely a step is searched for a milestone [s]. */
const MILESTONE_GRID = 2e-3;

/** How long after the end of the story a rolling vehicle is followed [s]; no coast of the story lasts longer. */
const LONGEST_COAST = 120;

/** The clutch circuit that each range applies. */
export const circuitOf: Readonly<Record<DriveRange, Circuit>> = {
  drive: 'forward',
  reverse: 'reverse',
};
const codeOf: Readonly<Record<DriveRange, string>> = { drive: 'P0731', reverse: 'P0736' };

/** Marches one engagement; one instance, one run. Over 300 lines with its driver: one march, one state, read as a whole. */
class March {
  private readonly story: EngagementStory;
  private readonly scene: EngagementScene;
  private readonly context: ControllerContext;
  private readonly sensor: SpeedSensor;
  private readonly work: Work = { steps: 0, rejected: 0, evaluations: 0 };
  private readonly trace: EngagementTrace;
  private readonly outputStep: number;
  private readonly state: Float64Array;
  private readonly seen = new Float64Array(4);
  private readonly moment = emptyMoment();
  private time = 0;
  private row = 0;
  private cycle = 0;
  private memory: ControllerMemory = controllerAtRest;
  private readonly events: EngagementEvent[] = [];
  private readonly states: { time: number; state: ControllerState }[] = [
    { time: 0, state: 'waiting' },
  ];
  private stoppedAt: number | null = null;
  private engagedAt: number | null = null;
  private filledAt: number | null = null;

  constructor(request: EngagementRequest) {
    this.story = request.story ?? trainingStory;
    this.outputStep = request.outputStep ?? 0.01;
    requireInRange(this.outputStep, { name: 'Output step', unit: 's', min: 1e-4, max: 1 });
    this.sensor = request.sensor ?? exactSensor;
    const circuit = circuitOf[request.range];
    const { tempC } = request;
    const plant = atTemperature(request.plant, tempC);
    this.scene = new EngagementScene({
      plant,
      fluid: fluidAt(fluidInPlant(plant, request.fluid), tempC),
      swell: densityRatio(request.fluid, 20, tempC),
      story: this.story,
      circuit,
    });
    this.context = {
      settings: request.settings ?? illustrativeSettings,
      rangeSelection: request.rangeSelection,
      mechanicalFailSafe: request.mechanicalFailSafe ?? 'neutral',
      ratio: plant.drive.ratios[circuit],
      ratioCode: codeOf[request.range],
    };
    const rows = Math.round(this.story.end / this.outputStep) + 1;
    this.trace = Object.fromEntries(
      TRACE_COLUMNS.map((column) => [column, new Float64Array(rows)]),
    ) as unknown as EngagementTrace;
    // In Park nothing loads the converter, so engine and turbine turn together where the governor meets friction.
    const free = (plant.drive.idleRpm + 12) * RAD_S_PER_RPM;
    this.state = Float64Array.from([free, free, 0, 0]);
  }

  run(): Engagement {
    const { story } = this;
    const stops = [story.select, story.brakeOff, throttleFullAt(story), story.end]
      .filter((stop) => stop <= story.end)
      .sort((a, b) => a - b);
    let converged = true;
    for (const stop of stops) {
      if (converged) converged = this.marchTo(stop);
      if (stop === story.select) this.select();
      if (stop === story.brakeOff) this.releaseBrake();
    }
    // A rolling vehicle gets Park only once it is slow enough, which may be after the trace has ended.
    while (converged && this.parkIsPending() && this.time < story.end + LONGEST_COAST) {
      converged = this.marchTo(this.time + 1);
    }
    return {
      trace: this.trace,
      events: [...this.events].sort((a, b) => a.time - b.time),
      states: this.states,
      stoppedAfter: this.stoppedAt === null ? null : this.stoppedAt - story.select,
      engagedAfter: this.engagedAt === null ? null : this.engagedAt - story.select,
      status: { converged, work: this.work },
    };
  }

  private parkIsPending(): boolean {
    return this.memory.state === 'failSafeNeutral' && this.context.rangeSelection === 'electronic';
  }

  private select(): void {
    this.scene.selected = true;
    this.enter(rangeSelected(this.time), this.time);
    this.note('range selected', this.time);
  }

  private releaseBrake(): void {
    if (this.memory.state !== 'failSafePark') this.scene.held = false;
    this.note('brake released', this.time);
  }

  private note(event: EngagementEventName, time: number): void {
    this.events.push({ time, event });
  }

  private enter(memory: ControllerMemory, time: number): void {
    if (memory.state !== this.memory.state) this.states.push({ time, state: memory.state });
    this.memory = memory;
  }

  /** Marches to a time, restarting the stepper wherever the law changes. False if the solver gave up. */
  private marchTo(end: number): boolean {
    let firstStep = 1e-4;
    while (this.time < end) {
      const { scene, state, work } = this;
      const stepper = new Stepper(
        scene,
        { time: this.time, state },
        { relative: RELATIVE, absolute: ABSOLUTE, maxStep: MAX_STEP },
        work,
        firstStep,
      );
      for (;;) {
        if (work.steps > MOST_STEPS) return false;
        const step = stepper.advance(end);
        if (step === 'failed') return false;
        const corner = this.cornerIn(step);
        const until = corner ?? step.t1;
        const changed = this.observe(step, until);
        if (changed !== null || corner !== null) {
          const at = changed ?? until;
          insideStep(step, at, this.state);
          this.time = at;
          this.settle();
          if (this.refill) this.state[VOLUME] = 0;
          this.refill = false;
          firstStep = Math.min(1e-3, Math.max(1e-5, step.t1 - step.t0));
          break;
        }
        this.time = step.t1;
        this.state.set(step.y1);
        this.settle();
        if (this.time >= end) return true;
      }
    }
    return true;
  }

  /** Nothing runs backward past its stop through rounding, and a held vehicle stands. */
  private settle(): void {
    const { state, scene } = this;
    if (scene.held || (state[VEHICLE] as number) < 1e-9) state[VEHICLE] = 0;
    if ((state[VOLUME] as number) < 0) state[VOLUME] = 0;
  }

  /** The first time within a step at which the law has a corner: clutch volume at a knee, vehicle at rest. */
  private cornerIn(step: Step): number | null {
    const stroke = this.scene.plant.clutches[this.scene.circuit].strokeVolume;
    let first = Number.POSITIVE_INFINITY;
    const watch = (index: number, level: number, downOnly: boolean): void => {
      const before = (step.y0[index] as number) - level;
      const after = (step.y1[index] as number) - level;
      // A step that starts on the corner has it behind it.
      const onIt = Math.abs(before) <= 1e-9 * Math.max(level, 1e-6);
      if (onIt || before > 0 === after > 0 || (downOnly && before < 0)) return;
      const found = findRoot(
        (time) => {
          insideStep(step, time, this.seen);
          return (this.seen[index] as number) - level;
        },
        step.t0,
        step.t1,
        before,
        after,
      ).root;
      first = Math.min(first, found);
    };
    watch(VOLUME, FIRST_FILL_SHARE * stroke, false);
    watch(VOLUME, stroke, false);
    if (!this.scene.held) watch(VEHICLE, 0, true);
    // A corner in the very last rounding of the step is the end of the step.
    return step.t1 - first >= 1e-12 ? first : null;
  }

  /** Records the trace and runs the controller up to a time; returns the time at which the law changed, if it did. */
  private observe(step: Step, until: number): number | null {
    this.findMilestones(step, until);
    const cycleTime = this.context.settings.sample;
    for (;;) {
      const next = this.cycle * cycleTime;
      // The row at the moment of a change shows the moment before it.
      this.record(step, Math.min(next, until));
      if (next > until + 1e-12) return null;
      const changed = this.controlAt(step, next);
      this.cycle += 1;
      if (changed) return next;
    }
  }

  private record(step: Step, until: number): void {
    const { trace, moment } = this;
    while (this.row < trace.time.length && this.row * this.outputStep <= until + 1e-12) {
      const { row } = this;
      const time = row * this.outputStep;
      insideStep(step, Math.min(time, step.t1), this.seen);
      const y = this.seen;
      this.scene.at(time, y, moment);
      const turbine = (y[TURBINE] as number) / RAD_S_PER_RPM;
      trace.time[row] = time;
      trace.engineRpm[row] = (y[ENGINE] as number) / RAD_S_PER_RPM;
      trace.turbineRpm[row] = turbine;
      // Between two accepted steps the interpolation may dip below a standstill by a rounding.
      const vehicleSpeed = Math.max(0, y[VEHICLE] as number);
      trace.outputRpm[row] = vehicleSpeed / this.scene.metresPerOutput / RAD_S_PER_RPM;
      trace.vehicleSpeed[row] = vehicleSpeed;
      trace.slipRpm[row] = this.scene.slip(y) / RAD_S_PER_RPM;
      trace.clutchPressure[row] = moment.clutchPressure;
      trace.clutchCommand[row] = moment.clutchCommand;
      trace.linePressure[row] = moment.linePressure;
      trace.capacity[row] = moment.capacity;
      trace.clutchTorque[row] = moment.clutchTorque;
      trace.impellerTorque[row] = moment.impellerTorque;
      trace.turbineTorque[row] = moment.turbineTorque;
      trace.engineTorque[row] = moment.engineTorque;
      trace.throttle[row] = throttleAt(this.story, time);
      trace.turbineSeenRpm[row] = this.turbineSeen(turbine, row);
      this.row += 1;
    }
  }

  private turbineSeen(turbineRpm: number, count: number): number {
    const rest = this.scene.plant.turbineSensorRestRpm;
    return sensorReading(this.sensor, Math.max(rest, turbineRpm), count);
  }

  /** One controller cycle; true when it changed what the equations see. */
  private controlAt(step: Step, time: number): boolean {
    if (this.memory.state === 'waiting') return false;
    insideStep(step, Math.min(time, step.t1), this.seen);
    const y = this.seen;
    const vehicleSpeed = Math.max(0, y[VEHICLE] as number);
    const { memory, events } = controllerCycle(
      this.memory,
      {
        time,
        turbineRpm: this.turbineSeen((y[TURBINE] as number) / RAD_S_PER_RPM, this.cycle),
        outputRpm: vehicleSpeed / this.scene.metresPerOutput / RAD_S_PER_RPM,
        vehicleSpeed,
        throttle: throttleAt(this.story, time),
      },
      this.context,
    );
    const before = this.memory.state;
    this.enter(memory, time);
    this.events.push(...events);
    return memory.state !== before && this.act(memory.state);
  }

  /** True where the next stretch starts with an empty clutch. */
  private refill = false;

  private act(state: ControllerState): boolean {
    const { scene } = this;
    switch (state) {
      case 'pressureRaised':
        scene.raise = this.context.settings.pressureRaise;
        return true;
      case 'failSafeNeutral':
      case 'failSafePark':
        scene.vented = true;
        scene.raise = 1;
        if (state === 'failSafePark') scene.held = true;
        return true;
      case 'failSafeDefaultGear':
        // The held gear has a clutch of its own, empty until now; the failed one lets go at once.
        scene.raise = 1;
        scene.fullPressure = true;
        scene.circuit = 'high';
        scene.ratio = scene.plant.drive.ratios.high;
        this.refill = true;
        return true;
      default:
        return false;
    }
  }

  /** First times at which the clutch was full, the turbine stood and the slip was gone. */
  private findMilestones(step: Step, until: number): void {
    if (!this.scene.selected || this.memory.state.startsWith('failSafe')) return;
    const stroke = this.scene.plant.clutches[this.scene.circuit].strokeVolume;
    const crossing = (value: (y: Float64Array) => number): number | null =>
      firstReached(step, until, MILESTONE_GRID, value, this.seen);
    this.filledAt ??= this.milestone(
      'clutch filled',
      crossing((y) => (y[VOLUME] as number) - stroke),
    );
    this.stoppedAt ??= this.milestone(
      'turbine stopped',
      crossing((y) => STOPPED_RPM * RAD_S_PER_RPM - (y[TURBINE] as number)),
    );
    this.engagedAt ??= crossing((y) =>
      Math.min(
        ENGAGED_SLIP_RPM * RAD_S_PER_RPM - Math.abs(this.scene.slip(y)),
        ((y[VOLUME] as number) - stroke) / stroke,
      ),
    );
  }

  private milestone(
    event: 'clutch filled' | 'turbine stopped',
    time: number | null,
  ): number | null {
    if (time === null) return null;
    this.note(event, time);
    return time;
  }
}

/**
 * A range selected at standstill and the take-off after it, with the controller watching.
 *
 * Equation: Je dwe/dt = Te - Tp; Jt dwt/dt = TR Tp - Tc; dV/dt = Qfeed - Qleak(p(V)); m dv/dt = Tc i / r - 150 N.
 * Clutch torque is capacity x tanh(slip / 2 rad/s): the regularised dry-friction law, so a standing turbine creeps
 * by a few rpm. Line pressure is quasi-steady. Vented, a clutch drains through a hole as wide as its feed.
 *
 * @param request plant, fluid, tempC [degC], range, rangeSelection, outputStep [s]
 * @returns trace (time [s], speeds [rpm], pressures [Pa], torques [N m]), events, controller states, work done
 * Range: -30 to 140 degC; every combination of faults.
 * @throws EngineError out of range.
 * Leaves out: accumulators, orifice check balls, shaft flexibility, brakes other than held or free, grade.
 * Source: converter SAE J643 definitions; clutch and fill as in their files; method Rodas3 (Sandu et al. 1997),
 * relative tolerance 1e-5, corners located on the dense output.
 * @example
 * solveEngagement({ plant: training, fluid: makeFluid(fluidClasses['low-viscosity']), tempC: 20, range: 'drive', rangeSelection: 'electronic' }).status.converged // true
 */
export function solveEngagement(request: EngagementRequest): Engagement {
  return new March(request).run();
}
