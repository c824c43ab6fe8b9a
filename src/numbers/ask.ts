/** Short questions to the car and the engine, in the units that people read. */
import {
  clutchKpa,
  makeCar,
  readingOf,
  type Asked,
  type CarGiven,
  type Reading,
} from '../car/index.ts';
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
  type FluidClass,
  type FluidSpec,
  type FluidState,
} from '../engine/index.ts';

export type FluidName = FluidClass | FluidSpec;

/** A fluid at a temperature, in SI; that of the training car where none is named. */
export const fluidState = (tempC: number, name: FluidName = DEFAULT_FLUID): FluidState =>
  fluidAt(makeFluid(typeof name === 'string' ? fluidClasses[name] : name), tempC);
/** Kinematic viscosity [cSt]. */
export const kinematicCSt = (tempC: number, name?: FluidName): number =>
  fluidState(tempC, name).kinematic * 1e6;
/** Dynamic viscosity [mPa·s]. */
export const dynamicMPas = (tempC: number, name?: FluidName): number =>
  fluidState(tempC, name).dynamic * 1e3;

/** A car and what is asked of it in one. */
export type CarAsked = CarGiven & Asked;
/** What its gauges show, settled. */
export const read = (asked: CarAsked): Reading => readingOf(makeCar(asked), asked);
/** Pressure of the one clutch applied [kPa]. */
export const tapKpa = (asked: CarAsked): number => clutchKpa(makeCar(asked), asked);

/** Leak of a gap [L/min], and how much of its pressure drop is viscous [%]. */
export interface GapLeak {
  readonly flow: number;
  readonly viscousPercent: number;
}
type Gap = Parameters<typeof gapFlow>[0];

function gapLeak(gap: Gap, tempC: number, kPa: number): GapLeak {
  const { flow, viscousShare } = gapFlow(gap, kPa * 1e3, fluidState(tempC));
  return { flow: litresPerMinute(flow), viscousPercent: 100 * viscousShare };
}
/** A crack in the transfer seal of the training transmission, its own width and land, by its height. */
export const crackLeak = (heightMm: number, tempC: number, kPa: number): GapLeak =>
  gapLeak({ ...training.leaks.forward.transferSeal, height: heightMm / 1e3 }, tempC, kPa);

/** Leak of a round hole [L/min]. */
export function holeLeak(
  diameterMm: number,
  tempC: number,
  kPa: number,
  fluid?: FluidName,
): number {
  const { density, kinematic } = fluidState(tempC, fluid);
  return litresPerMinute(holeFlow(holeArea(diameterMm / 1e3), kPa * 1e3, density, kinematic));
}
