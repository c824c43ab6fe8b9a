import {
  clutchPressureFor,
  converterTorqueRatio,
  impellerTorque,
  RAD_S_PER_RPM,
  stallSpeed,
  training,
  type Circuit,
  type Plant,
} from '../engine/index.ts';

/**
 * What a clutch is asked to hold while the car does not move. Standing, the turbine stands too, and the clutch that holds
 * it carries the whole turbine torque: the stall torque ratio times what the impeller takes from the engine. That goes
 * with the square of engine speed, so there is no one needed pressure but three, and these are all there are:
 * - standing: in gear at idle against the brake, the least a clutch must hold;
 * - gentle: pulling away on a fifth of the throttle, at the speed where engine and stalled converter balance;
 * - firm: pulling away at the engine speed of the load test, 1500 rpm in the training transmission, about half throttle.
 * Nothing above firm is a demand here: a sound clutch on its hot idle command could not meet it, and that is no fault.
 */
export const DEMANDS = ['standing', 'gentle', 'firm'] as const;
/** Name of a demand. */
export type Demand = (typeof DEMANDS)[number];

/** Throttle of a gentle take-off, 0 to 1. */
export const GENTLE_THROTTLE = 0.2;

/** Pressure [kPa] and torque [N·m] that a demand asks of a clutch, and the engine speed [rpm] it comes at. */
export interface Need {
  readonly kPa: number;
  readonly torqueNm: number;
  readonly engineRpm: number;
}

/** Torque that a standing turbine puts on the clutch at an engine speed [N·m]. */
export function stalledTorque(engineRpm: number, plant: Plant = training): number {
  const { drive } = plant;
  return converterTorqueRatio(drive, 0) * impellerTorque(drive, engineRpm * RAD_S_PER_RPM, 0);
}

/** Pressure a sound clutch of a circuit needs for a torque [kPa]. */
export const kPaFor = (
  torqueNm: number,
  plant: Plant = training,
  circuit: Circuit = 'forward',
): number => clutchPressureFor(plant.healthy.clutches[circuit], torqueNm) / 1e3;

function engineRpmOf(demand: Demand, plant: Plant): number {
  switch (demand) {
    case 'standing':
      return plant.testPoints.idle.engineRpm;
    case 'gentle':
      return stallSpeed(plant.drive, GENTLE_THROTTLE, plant.drive.idleRpm);
    case 'firm':
      return plant.testPoints.load.engineRpm;
  }
}

/** What a demand asks of the sound clutch of a circuit. Worn friction needs more; see torque. */
export function needOf(
  demand: Demand,
  plant: Plant = training,
  circuit: Circuit = 'forward',
): Need {
  const engineRpm = engineRpmOf(demand, plant);
  const torqueNm = stalledTorque(engineRpm, plant);
  return { engineRpm, torqueNm, kPa: kPaFor(torqueNm, plant, circuit) };
}

/** The needs of the training transmission's forward clutch. */
export const needs: Readonly<Record<Demand, Need>> = {
  standing: needOf('standing'),
  gentle: needOf('gentle'),
  firm: needOf('firm'),
};

/** The demand that each test point puts on a clutch. */
export const demandAt = { idle: 'standing', load: 'firm' } as const satisfies Record<
  keyof Plant['testPoints'],
  Demand
>;
