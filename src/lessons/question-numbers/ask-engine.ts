/**
 * Short questions to the engine, in the units that people read (kPa, °C, L/min, N·m, mm). Conversions happen here, once,
 * so that the numbers of a lesson's questions read like the questions themselves.
 */
import type { testPoints } from '../../engine/index.ts';
import {
  CIRCUITS,
  DEFAULT_FLUID,
  applyFaults,
  commandsAt,
  faultSeverity,
  findRoot,
  fluidAt,
  fluidClasses,
  gapFlow,
  gearbox,
  holeArea,
  holeFlow,
  litresPerMinute,
  makeFluid,
  revPerSecond,
  solveSteady,
  training,
  type Circuit,
  type FaultSet,
  type Fluid,
  type FluidClass,
  type FluidSpec,
  type Plant,
} from '../../engine/index.ts';

export type FluidName = FluidClass | FluidSpec;

export function fluidOf(name: FluidName = DEFAULT_FLUID): Fluid {
  return makeFluid(typeof name === 'string' ? fluidClasses[name] : name);
}

export interface FluidNumbers {
  readonly kinematicCSt: number;
  readonly dynamicMPas: number;
  readonly densityKgL: number;
}

export function fluidNumbers(tempC: number, name?: FluidName): FluidNumbers {
  const state = fluidAt(fluidOf(name), tempC);
  return {
    kinematicCSt: state.kinematic * 1e6,
    dynamicMPas: state.dynamic * 1e3,
    densityKgL: state.density / 1e3,
  };
}

export interface GapQuestion {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly lengthMm: number;
  readonly kPa: number;
  readonly tempC: number;
  readonly fluid?: FluidName;
}

/** Leak through a gap [L/min] and the viscous share of its pressure drop [%]. */
export function gapLeak({ widthMm, heightMm, lengthMm, kPa, tempC, fluid }: GapQuestion) {
  const gap = { width: widthMm / 1e3, height: heightMm / 1e3, length: lengthMm / 1e3 };
  const { flow, viscousShare } = gapFlow(gap, kPa * 1e3, fluidAt(fluidOf(fluid), tempC));
  return { flow: litresPerMinute(flow), viscousPercent: 100 * viscousShare };
}

/** The crack of the training transmission's transfer seal: 14 mm wide, 3 mm long. */
export function crackLeak(heightMm: number, tempC: number, kPa = 400) {
  const { width, length } = gearbox.leaks.forward.transferSeal;
  return gapLeak({ widthMm: width * 1e3, lengthMm: length * 1e3, heightMm, kPa, tempC });
}

/** Leak through a drilled hole [L/min]. */
export function holeLeak(at: {
  readonly diameterMm: number;
  readonly kPa: number;
  readonly tempC: number;
  readonly fluid?: FluidName;
}): number {
  const state = fluidAt(fluidOf(at.fluid), at.tempC);
  return litresPerMinute(
    holeFlow(holeArea(at.diameterMm / 1e3), at.kPa * 1e3, state.density, state.kinematic),
  );
}

export interface SteadyQuestion {
  readonly tempC: number;
  /** `idle`: 700 rpm, line 600, clutch 400 kPa. `load`: 1500 rpm, 1000 and 800 kPa. */
  readonly at?: keyof typeof testPoints;
  readonly rpm?: number;
  readonly lineKpa?: number;
  readonly clutchKpa?: number;
  readonly applied?: readonly Circuit[];
  readonly crackMm?: number;
  readonly faults?: FaultSet;
  readonly fluid?: FluidName;
}

export function plantWith(faults: FaultSet = {}, crackMm = 0): Plant {
  const crack: FaultSet =
    crackMm > 0 ? { transferSeal: { severity: faultSeverity('transferSeal', crackMm) } } : {};
  return applyFaults(training, { ...faults, ...crack });
}

export interface SteadyNumbers {
  readonly lineKpa: number;
  readonly pumpLmin: number;
  readonly slipLmin: number;
  readonly intakeLmin: number;
  readonly clearancesLmin: number;
  readonly leftOverLmin: number;
  readonly clutchKpa: Readonly<Record<Circuit, number>>;
  readonly leakLmin: Readonly<Record<Circuit, number>>;
  readonly holdsNm: Readonly<Record<Circuit, number>>;
}

export function steady(question: SteadyQuestion): SteadyNumbers {
  const point = commandsAt(training, question.at ?? 'idle', question.applied?.[0] ?? 'forward');
  const plant = plantWith(question.faults, question.crackMm);
  const state = solveSteady({
    plant,
    fluid: fluidOf(question.fluid),
    tempC: question.tempC,
    engineSpeed: revPerSecond(question.rpm ?? point.engineRpm),
    lineCommand: question.lineKpa === undefined ? point.line : question.lineKpa * 1e3,
    clutchCommand: question.clutchKpa === undefined ? point.clutch : question.clutchKpa * 1e3,
    applied: question.applied ?? ['forward'],
  });
  if (!state.status.converged)
    throw new Error(`The engine did not settle for ${JSON.stringify(question)}.`);
  const each = (of: (circuit: Circuit) => number | undefined): Record<Circuit, number> =>
    Object.fromEntries(CIRCUITS.map((c) => [c, of(c) ?? 0])) as Record<Circuit, number>;
  return {
    lineKpa: state.linePressure / 1e3,
    pumpLmin: litresPerMinute(state.pumpFlow),
    slipLmin: litresPerMinute(state.pumpSlip),
    intakeLmin: litresPerMinute(state.pumpIntake),
    clearancesLmin: litresPerMinute(state.clearances),
    leftOverLmin: litresPerMinute(state.leftOver),
    clutchKpa: each((c) => (state.circuits[c]?.pressure ?? 0) / 1e3),
    leakLmin: each((c) => litresPerMinute(state.circuits[c]?.leak ?? 0)),
    holdsNm: each((c) => state.circuits[c]?.holds),
  };
}

/** Up to what temperature [°C] the forward clutch has the pressure it needs. */
export function crossingC(neededKpa: number, question: Omit<SteadyQuestion, 'tempC'>): number {
  const spare = (tempC: number): number =>
    steady({ ...question, tempC }).clutchKpa.forward - neededKpa;
  const { root, converged } = findRoot(spare, 0, 130);
  if (!converged)
    throw new Error(`Pressure had never crosses ${neededKpa} kPa between 0 and 130 °C.`);
  return root;
}
