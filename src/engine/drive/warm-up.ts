/** The fluid and all that warms with it, as one lump. Invented for the training gearbox. */
export interface ThermalLump {
  /** Heat capacity [J/K]. */
  readonly capacity: number;
  /** Loss to the air [W/K]. */
  readonly loss: number;
}

/** Fluid and case of the training gearbox; invented. */
export const trainingLump: ThermalLump = { capacity: 46e3, loss: 26 };

/** Heat put into the fluid by how it is driven [W]; invented. */
export const driveHeat = { idling: 1000, gentle: 2200, pulling: 6000 } as const;
/** A way of driving, by the heat it makes. */
export type DriveKind = keyof typeof driveHeat;

/**
 * Fluid temperature after a time of one kind of driving.
 *
 * Equation: C dT/dt = P - UA (T - Tamb), so T = Tend + (T0 - Tend) exp(-t UA / C), Tend = Tamb + P / UA.
 *
 * @param lump capacity [J/K], loss [W/K]
 * @param drive startC and ambientC [degC], heat [W], time [s]
 * @returns temperature [degC]
 * Range: time zero and above.
 * Leaves out: the cooler's thermostat, the converter heating the fluid faster than the case, wind.
 * Source: lumped capacitance, F. P. Incropera and D. P. DeWitt, Fundamentals of Heat and Mass Transfer, eq. 5.5-5.7.
 * @example
 * warmedTo(trainingLump, { startC: 20, ambientC: 20, heat: 2600, time: 1e6 }) // 120
 */
export function warmedTo(
  lump: ThermalLump,
  drive: {
    readonly startC: number;
    readonly ambientC: number;
    readonly heat: number;
    readonly time: number;
  },
): number {
  const end = drive.ambientC + drive.heat / lump.loss;
  return end + (drive.startC - end) * Math.exp((-drive.time * lump.loss) / lump.capacity);
}

/**
 * Time until the fluid reaches a temperature, or null where this driving never gets it there.
 *
 * Equation: t = (C / UA) ln((T0 - Tend) / (T - Tend)).
 *
 * @param lump capacity [J/K], loss [W/K]
 * @param drive startC, ambientC and targetC [degC], heat [W]
 * @returns time [s] or null
 * Range: any; a target already met gives 0.
 * Source: as warmedTo.
 * @example
 * timeToReach(trainingLump, { startC: 20, ambientC: 20, targetC: 70, heat: 2600 }) // 1226.337
 */
export function timeToReach(
  lump: ThermalLump,
  drive: {
    readonly startC: number;
    readonly ambientC: number;
    readonly targetC: number;
    readonly heat: number;
  },
): number | null {
  if (drive.targetC <= drive.startC) return 0;
  const end = drive.ambientC + drive.heat / lump.loss;
  if (end <= drive.targetC) return null;
  return (lump.capacity / lump.loss) * Math.log((drive.startC - end) / (drive.targetC - end));
}
