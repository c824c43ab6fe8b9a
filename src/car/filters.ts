/**
 * Two filters of one shape in front of the training transmission's pump, told apart by how much of the maker's media one has.
 * Darcy's law: what is lost in media goes with viscosity and flow, and against its area. The resistance is the sheet's, all of
 * it taken for media; height and amount of the pour are invented.
 */
import {
  DEFAULT_FLUID,
  filterLoss,
  findRoot,
  fluidAt,
  fluidClasses,
  FLUID_TEMP_C,
  makeFluid,
  revPerSecond,
  training,
  type FluidState,
} from '../engine/index.ts';

/** Poured through: a quart, as near as a liter prints alike [m3]. */
const POURED = 0.96e-3;
/** Fluid kept standing over the media [m]. */
const HEAD = 0.1;
const GRAVITY = 9.81;
export const POUR = { litres: POURED * 1e3, headMm: HEAD * 1e3 } as const;
/** Warm enough to pour, and fit to put a hand near [°C]. */
export const POUR_WARM_C = 40;
/** A pour this many times as long as the other's is no longer alike: a fifth. */
export const FIFTH = 1.2;

const { pump } = training;
/** What the air can spare to push fluid through the filter [kPa]. */
export const LIMIT_KPA = pump.suctionLimit / 1e3;

const fluid = makeFluid(fluidClasses[DEFAULT_FLUID]);
export const fluidIn = (tempC: number): FluidState => fluidAt(fluid, tempC);

export interface Drawn {
  /** Media there is, of the maker's, 1 for all of it. */
  readonly media: number;
  readonly engineRpm: number;
}

/** What the pump asks of a filter and what it gets. */
export function drawnThrough({ media, engineRpm }: Drawn, { dynamic }: FluidState) {
  const asked = pump.displacement * revPerSecond(engineRpm);
  const wantedKpa = filterLoss(pump.suctionResistance / media, asked, dynamic) / 1e3;
  return {
    /** What all of the flow would lose there, and what is lost [kPa]. */
    wantedKpa,
    lostKpa: Math.min(wantedKpa, LIMIT_KPA),
    /** What the pump gets of what it asks for, 0 to 1. */
    share: Math.min(1, LIMIT_KPA / wantedKpa),
  };
}

/** Below this the pump is starved [°C]; null where it is nowhere within the range of the fluid law. */
export function starvedBelow(drawn: Drawn): number | null {
  const over = (tempC: number): number => drawnThrough(drawn, fluidIn(tempC)).wantedKpa - LIMIT_KPA;
  const { root, converged } = findRoot(over, FLUID_TEMP_C.min, FLUID_TEMP_C.max);
  return converged ? root : null;
}

/** How long the pour takes by the watch [s]: by its own weight, so that only cSt count. */
export const pourSeconds = (media: number, { kinematic }: FluidState): number =>
  (POURED * kinematic * pump.suctionResistance) / (media * GRAVITY * HEAD);
