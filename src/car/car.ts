import {
  applyFaults,
  faultKinds,
  faultSeverity,
  fluidClasses,
  makeFluid,
  training,
  type Circuit,
  type FaultId,
  type FaultKind,
  type FaultSet,
  type Fluid,
  type FluidClass,
  type FluidSpec,
  type Plant,
} from '../engine/index.ts';

/** A transmission with its faults, and what it is filled with: what every question in this folder is asked of. */
export interface Car {
  readonly plant: Plant;
  readonly fluid: Fluid;
}

/** What a car may be told apart by; everything left out is the sound training transmission on its own fluid. */
export interface CarGiven {
  readonly transmission?: Plant;
  readonly faults?: FaultSet;
  /** Height of a crack in the transfer seal [mm]; the fault that the course follows. */
  readonly crackMm?: number;
  readonly fluid?: FluidClass | FluidSpec;
}

/** The crack that the course follows from lesson to lesson [mm]: ten thousandths of an inch. */
export const REFERENCE_CRACK_MM = 0.25;

/** A crack in the transfer seal as a fault; 0 is none. */
export const crackFault = (mm: number): FaultSet => ({
  transferSeal: { severity: faultSeverity('transferSeal', mm) },
});

/** Whether a fault sits in one circuit, so that somebody has to say which. */
export function sitsInOneCircuit(id: FaultId): boolean {
  const kind: FaultKind = faultKinds[id];
  return kind.oneCircuit;
}

/** Severity of a share of the worst [%]. The false sensor is there or not; half of it counts as there. */
export function severityOf(id: FaultId, percent: number): number {
  const kind: FaultKind = faultKinds[id];
  return kind.onOff === true ? (percent >= 50 ? 1 : 0) : percent / 100;
}

/** One fault by its share of the worst [%]; a circuit is for those that sit in one. */
export function oneFault(id: FaultId, percent: number, circuit: Circuit = 'forward'): FaultSet {
  const severity = severityOf(id, percent);
  return { [id]: sitsInOneCircuit(id) ? { severity, circuit } : { severity } };
}

/** A car as described. */
export function makeCar({ transmission = training, faults, crackMm = 0, fluid }: CarGiven): Car {
  const cracked = crackMm > 0 ? { ...faults, ...crackFault(crackMm) } : faults;
  const filled = typeof fluid === 'string' ? fluidClasses[fluid] : (fluid ?? transmission.fluid);
  return {
    plant: cracked === undefined ? transmission : applyFaults(transmission, cracked),
    fluid: makeFluid(filled),
  };
}

/** The sound training car. */
export const soundCar: Car = /* @__PURE__ */ makeCar({});
