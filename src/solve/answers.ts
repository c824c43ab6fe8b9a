import {
  EngineError,
  airHeld,
  airTest,
  fluidAt,
  gapFlow,
  litresPerMinute,
  revPerSecond,
  solveEngagement,
  solveSteady,
  trainingStory,
} from '../engine/index.ts';
import type { Fluid, FluidState } from '../engine/index.ts';
import { carOf, fluidOf } from './car.ts';
import type { Request, RequestKind } from './request-schema.ts';
import type { Refusal } from './sentence.ts';

export type Answer = Readonly<Record<string, unknown>> | Refusal;

const kilo = (value: number): number => value / 1e3;

/** One of several temperatures: a refusal names which. */
function fluidAtOne(fluid: Fluid, tempC: number, path: string): FluidState {
  try {
    return fluidAt(fluid, tempC);
  } catch (thrown) {
    if (thrown instanceof EngineError) throw new EngineError(path, thrown.message);
    throw thrown;
  }
}

/** How each kind of request is answered, once it is known to be well formed. */
export const answers: { [kind in RequestKind]: (request: Request[kind]) => Answer } = {
  fluid: (request) => {
    const fluid = fluidOf(request.fluid);
    const { temperature_C: asked } = request;
    const states = Array.isArray(asked)
      ? asked.map((tempC, index) => fluidAtOne(fluid, tempC, `temperature_C.${index}`))
      : [fluidAt(fluid, asked)];
    return {
      kinematic_cSt: states.map((state) => state.kinematic * 1e6),
      dynamic_mPas: states.map((state) => state.dynamic * 1e3),
      density_kgm3: states.map((state) => state.density),
    };
  },
  gap: (request) => {
    const state = fluidAt(fluidOf(request.fluid), request.temperature_C);
    const gap = {
      width: request.width_mm / 1e3,
      height: request.height_mm / 1e3,
      length: request.length_mm / 1e3,
    };
    const { flow, reynolds, viscousShare } = gapFlow(gap, request.pressure_kPa * 1e3, state);
    return { flow_Lmin: litresPerMinute(flow), reynolds, viscousShare };
  },
  steady: (request) => {
    const solved = solveSteady({
      ...carOf(request),
      tempC: request.temperature_C,
      engineSpeed: revPerSecond(request.engine_rpm),
      lineCommand: request.line_kPa * 1e3,
      clutchCommand: request.clutch_kPa * 1e3,
      applied: request.applied,
    });
    if (!solved.status.converged) {
      return {
        error: `The steady state was not found: ${solved.status.iterations} iterations, residual ${solved.status.residual} of pump flow.`,
        path: '',
      };
    }
    return {
      line_kPa: kilo(solved.linePressure),
      circuits: Object.fromEntries(
        Object.entries(solved.circuits).map(([name, circuit]) => [
          name,
          {
            pressure_kPa: kilo(circuit.pressure),
            leak_Lmin: litresPerMinute(circuit.leak),
            holds_Nm: circuit.holds,
          },
        ]),
      ),
      pump_Lmin: litresPerMinute(solved.pumpFlow),
      leftOver_Lmin: litresPerMinute(solved.leftOver),
      cooler_Lmin: litresPerMinute(solved.coolerFlow),
    };
  },
  engagement: (request) => {
    const solved = solveEngagement({
      ...carOf(request),
      tempC: request.temperature_C,
      range: request.range,
      rangeSelection: request.rangeSelection,
    });
    if (!solved.status.converged) {
      return {
        error: `The engagement was not solved: the solver gave up after ${solved.status.work.steps} steps.`,
        path: '',
      };
    }
    const { trace, engagedAfter } = solved;
    return {
      // A hundredth by division, since k x 0.01 prints as 0.35000000000000003.
      time_s: Array.from(trace.time, (_, row) => row / 100),
      engine_rpm: Array.from(trace.engineRpm),
      turbine_rpm: Array.from(trace.turbineRpm),
      output_rpm: Array.from(trace.outputRpm),
      clutch_kPa: Array.from(trace.clutchPressure, kilo),
      line_kPa: Array.from(trace.linePressure, kilo),
      events: solved.events.map(({ time, event, code }) =>
        code === undefined ? { time_s: time, event } : { time_s: time, event, code },
      ),
      // On the clock of the trace, like the events.
      engaged_s: engagedAfter === null ? null : engagedAfter + trainingStory.select,
    };
  },
  airTest: (request) => {
    const { plant } = carOf(request);
    return {
      flow_gs: airTest(plant, request.circuit) * 1e3,
      held_percent: airHeld(plant, request.circuit) * 100,
    };
  },
};
