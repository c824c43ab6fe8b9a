import {
  EngineError,
  FAULT_IDS,
  airHeld,
  airTest,
  applyFaults,
  fluidAt,
  fluidClasses,
  gapFlow,
  litresPerMinute,
  makeFluid,
  parseSheet,
  plantFromSheet,
  revPerSecond,
  solveEngagement,
  solveSteady,
  training,
  trainingStory,
} from '../engine/index.ts';
import type { FaultSet, Fluid, Plant } from '../engine/index.ts';
import { requestSchemas } from './request-schema.ts';
import type { FaultsGiven, FluidGiven, Request, RequestKind } from './request-schema.ts';
import { sentenceFor } from './sentence.ts';

export interface Refusal {
  readonly error: string;
  readonly path: string;
}
export type Answer = Readonly<Record<string, unknown>> | Refusal;

const kilo = (value: number): number => value / 1e3;

function fluidOf(given: FluidGiven): Fluid {
  if (typeof given === 'string') return makeFluid(fluidClasses[given]);
  return makeFluid({
    kv40CSt: given.kv40_cSt,
    kv100CSt: given.kv100_cSt,
    density15: given.density15_kgm3,
  });
}

/** What a request asks about: a transmission, with its faults, and what it is filled with. */
function carOf(given: {
  readonly transmission?: unknown;
  readonly faults?: FaultsGiven | undefined;
  readonly fluid?: FluidGiven | undefined;
}): { readonly plant: Plant; readonly fluid: Fluid } {
  const sound = given.transmission === undefined ? training : transmissionOf(given.transmission);
  const settings = Object.entries(given.faults ?? {}).map(([id, fault]) => [
    id,
    typeof fault === 'number' ? { severity: fault } : fault,
  ]);
  return {
    plant: applyFaults(sound, Object.fromEntries(settings) as FaultSet),
    fluid: given.fluid === undefined ? makeFluid(sound.fluid) : fluidOf(given.fluid),
  };
}

function transmissionOf(given: unknown): Plant {
  try {
    return plantFromSheet(parseSheet(given));
  } catch (thrown) {
    if (!(thrown instanceof EngineError)) throw thrown;
    const path = thrown.argument === '' ? 'transmission' : `transmission.${thrown.argument}`;
    throw new EngineError(path, thrown.message);
  }
}

const answers: { [kind in RequestKind]: (request: Request[kind]) => Answer } = {
  fluid: (request) => {
    const fluid = fluidOf(request.fluid);
    const states = [request.temperature_C].flat().map((tempC) => fluidAt(fluid, tempC));
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

/** Where in a request an engine's argument came from. */
const requestPaths: Readonly<Record<string, string>> = {
  kv40CSt: 'fluid.kv40_cSt',
  kv100CSt: 'fluid.kv100_cSt',
  density15: 'fluid.density15_kgm3',
};

function requestPath(argument: string): string {
  if ((FAULT_IDS as readonly string[]).includes(argument)) return `faults.${argument}`;
  return requestPaths[argument] ?? argument;
}

const kinds = Object.keys(requestSchemas) as RequestKind[];

/** Answers one request; a bad one becomes a refusal, never an exception. */
export function answer(request: unknown): Answer {
  if (typeof request !== 'object' || request === null || Array.isArray(request)) {
    return {
      error: `The request is ${JSON.stringify(request)}; it must be an object with a kind.`,
      path: '',
    };
  }
  const { kind } = request as { kind?: unknown };
  if (!kinds.includes(kind as RequestKind)) {
    const given = kind === undefined ? 'missing' : JSON.stringify(kind);
    return { error: `kind is ${given}; it must be one of ${kinds.join(', ')}.`, path: 'kind' };
  }
  const known = kind as RequestKind;
  const parsed = requestSchemas[known].safeParse(request);
  if (!parsed.success) return sentenceFor(parsed.error, request);
  try {
    return (answers[known] as (given: unknown) => Answer)(parsed.data);
  } catch (thrown) {
    if (thrown instanceof EngineError)
      return { error: thrown.message, path: requestPath(thrown.argument) };
    throw thrown;
  }
}

/** Answers one request or an array of them. */
export function answerAll(requests: unknown): { answers: Answer[]; refused: boolean } {
  const list: unknown[] = Array.isArray(requests) ? requests : [requests];
  const given = list.map((request) => answer(request));
  return { answers: given, refused: given.some((one) => 'error' in one) };
}
