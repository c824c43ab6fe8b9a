/**
 * Short questions to the engine, in the units that people read (kPa, °C, L/min, N·m, mm). Conversions happen here, once,
 * so that the numbers of a lesson's questions read like the questions themselves.
 */
import { makeCar, readingOf, type Asked, type CarGiven } from '../../car/index.ts';
import {
  DEFAULT_FLUID,
  fluidAt,
  fluidClasses,
  gapFlow,
  holeArea,
  holeFlow,
  litresPerMinute,
  makeFluid,
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
  const { width, length } = training.leaks.forward.transferSeal;
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

/** A car and a reading in one: the point, where nothing else is said, is idle in the range of the first circuit applied. */
export interface SteadyQuestion extends CarGiven, Omit<Asked, 'point' | 'circuit' | 'engineRpm'> {
  readonly at?: keyof Plant['testPoints'];
}

export const plantWith = (faults: FaultSet = {}, crackMm = 0): Plant =>
  makeCar({ faults, crackMm }).plant;

export interface SteadyNumbers {
  readonly lineKpa: number;
  readonly pumpLmin: number;
  readonly slipLmin: number;
  readonly intakeLmin: number;
  readonly clearancesLmin: number;
  readonly bleedLmin: number;
  readonly leftOverLmin: number;
  readonly clutchKpa: Readonly<Record<Circuit, number>>;
  readonly leakLmin: Readonly<Record<Circuit, number>>;
  readonly holdsNm: Readonly<Record<Circuit, number>>;
}

export function steady({ at: point = 'idle', ...question }: SteadyQuestion): SteadyNumbers {
  const { clutches, ...reading } = readingOf(makeCar(question), { ...question, point });
  const { forward, reverse, high } = clutches;
  return {
    ...reading,
    clutchKpa: { forward: forward.kPa, reverse: reverse.kPa, high: high.kPa },
    leakLmin: { forward: forward.leakLmin, reverse: reverse.leakLmin, high: high.leakLmin },
    holdsNm: { forward: forward.holdsNm, reverse: reverse.holdsNm, high: high.holdsNm },
  };
}
