import { EngineError } from '../error.ts';
import { findRoot } from '../numerics/find-root.ts';

/** The fluid and all that warms with it, as one lump. Invented for the training transmission. */
export interface ThermalLump {
  /** Heat capacity [J/K]. */
  readonly capacity: number;
  /** Loss to the air [W/K]. */
  readonly loss: number;
  /** Exchange with the engine's coolant through the cooler [W/K]. */
  readonly exchange: number;
}

/** Fluid and case of the training transmission; invented. */
export const trainingLump: ThermalLump = { capacity: 46e3, loss: 26, exchange: 80 };

/** What the thermostat holds the engine's coolant at [degC], and how fast it comes there [s]; invented. */
export const coolant = { heldC: 88, time: 300 } as const;

/** Heat put into the fluid by how it is driven [W]; invented. */
export const driveHeat = { idling: 1000, gentle: 2200, pulling: 6000 } as const;
/** A way of driving, by the heat it makes. */
export type DriveKind = keyof typeof driveHeat;

/** Fluid and coolant temperature [degC]. */
export interface Warmth {
  readonly fluidC: number;
  readonly coolantC: number;
}

/** A stretch of one kind of driving: how warm it starts [degC], what it heats with [W], how long [s]. */
export interface Stretch extends Warmth {
  readonly ambientC: number;
  readonly heat: number;
  readonly time: number;
}

/**
 * Fluid and coolant temperature after a stretch of one kind of driving.
 *
 * Equation: C dT/dt = P - UA (T - Tamb) + H (Tc - T), Tc = 88 - (88 - Tc0) exp(-t / 300 s). With k = (UA + H) / C,
 * T = Te + B exp(-t / 300 s) + (T0 - Te - B) exp(-k t), Te = (P + UA Tamb + H 88) / (UA + H), B = -H (88 - Tc0) / (C (k - 1/300 s)).
 *
 * @param lump capacity [J/K], loss [W/K], exchange [W/K]
 * @param drive fluidC, coolantC and ambientC at the start [degC], heat [W], time [s]
 * @returns fluidC and coolantC [degC]
 * Range: time zero and above; a lump that answers exactly as fast as the coolant is refused.
 * @throws EngineError for such a lump.
 * Leaves out: the cooler's thermostat, the converter heating the fluid faster than the case, wind, an engine working hard.
 * Source: lumped capacitance, F. P. Incropera and D. P. DeWitt, Fundamentals of Heat and Mass Transfer, eq. 5.5-5.7, with a
 * second exponential for the coolant; figures invented.
 * @example
 * warmedTo(trainingLump, { fluidC: 20, coolantC: 20, ambientC: 20, heat: 1000, time: 1e6 }).fluidC // 80.755
 */
export function warmedTo(lump: ThermalLump, drive: Stretch): Warmth {
  const { capacity, loss, exchange } = lump;
  const rate = (loss + exchange) / capacity;
  const apart = rate - 1 / coolant.time;
  if (Math.abs(apart) * coolant.time < 1e-6) {
    throw new EngineError(
      'lump',
      `A lump that answers within ${coolant.time} s answers exactly as fast as the coolant; give it another capacity.`,
    );
  }
  const short = coolant.heldC - drive.coolantC;
  const fading = Math.exp(-drive.time / coolant.time);
  const end = (drive.heat + loss * drive.ambientC + exchange * coolant.heldC) / (loss + exchange);
  const lag = (-exchange * short) / (capacity * apart);
  const own = Math.exp(-rate * drive.time);
  return {
    fluidC: end + lag * fading + (drive.fluidC - end - lag) * own,
    coolantC: coolant.heldC - short * fading,
  };
}

/** Longest drive that is looked through for a temperature [s]: four hours, past which nothing changes. */
export const LONGEST_DRIVE = 4 * 3600;
/** How finely it is looked through [s]. */
const PIECE = 20;

/**
 * Time until the fluid reaches a temperature, or null where this driving never gets it there.
 *
 * @param lump capacity [J/K], loss [W/K], exchange [W/K]
 * @param drive fluidC, coolantC and ambientC at the start [degC], heat [W]
 * @param targetC temperature to reach [degC]
 * @returns time [s] or null
 * Range: up to four hours; a target already met gives 0.
 * Source: warmedTo, solved for time.
 * @example
 * timeToReach(trainingLump, { fluidC: 20, coolantC: 20, ambientC: 20, heat: 2200 }, 83) // 1230.4
 */
export function timeToReach(
  lump: ThermalLump,
  drive: Omit<Stretch, 'time'>,
  targetC: number,
): number | null {
  if (targetC <= drive.fluidC) return 0;
  const short = (time: number): number => warmedTo(lump, { ...drive, time }).fluidC - targetC;
  for (let from = 0; from < LONGEST_DRIVE; from += PIECE) {
    if (short(from + PIECE) >= 0) return findRoot(short, from, from + PIECE).root;
  }
  return null;
}
