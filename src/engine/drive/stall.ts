import { EngineError, requireInRange } from '../error.ts';
import { findRoot } from '../numerics/find-root.ts';
import { impellerTorque, RAD_S_PER_RPM } from './converter.ts';
import type { Converter } from './converter.ts';
import { engineTorque, TORQUE_END_RPM } from './engine-torque.ts';

/** Limits of what a stall may be asked at. */
export const STALL_LIMITS = {
  throttle: { name: 'Throttle', unit: '', min: 0, max: 1 },
  idleRpm: { name: 'Idle speed', unit: 'rpm', min: 300, max: 2000 },
} as const;

/**
 * Engine speed at stall: turbine standing, engine giving as much torque as the impeller takes.
 *
 * Equation: T_engine(n, u) = (n / K)^2, solved for n.
 *
 * @param converter capacity [rpm/sqrt(N m)], stallTorqueRatio [-]
 * @param throttle u, 0 closed to 1 open [-]
 * @param idleRpm idle speed [rpm]
 * @returns engine speed [rpm]
 * Range: throttle 0 to 1, idle 300 to 2000 rpm. Unique: engine torque falls with speed from idle on, impeller
 * torque rises.
 * @throws EngineError out of range, naming it, and for a converter so tight that no speed balances.
 * Leaves out: the seconds it takes to get there and the heat that makes a real stall test dangerous.
 * Source: definition of stall speed, SAE J643; engine and converter as in engineTorque and impellerTorque.
 * @example
 * stallSpeed({ capacity: 170, stallTorqueRatio: 2 }, 0.6, 700) // 1700
 */
export function stallSpeed(converter: Converter, throttle: number, idleRpm: number): number {
  requireInRange(throttle, STALL_LIMITS.throttle);
  requireInRange(idleRpm, STALL_LIMITS.idleRpm);
  const excess = (rpm: number): number =>
    engineTorque(rpm, throttle, idleRpm) - impellerTorque(converter, rpm * RAD_S_PER_RPM, 0);
  const found = findRoot(excess, 0, TORQUE_END_RPM);
  if (!found.converged) {
    throw new EngineError(
      'capacity',
      `With a converter capacity of ${converter.capacity} rpm/sqrt(N m) there is no stall speed from 0 to ${TORQUE_END_RPM} rpm.`,
    );
  }
  return found.root;
}
