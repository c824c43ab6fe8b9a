import type { Clutch } from './clutch/torque.ts';
import { holeArea } from './flow/hole.ts';
import type { Gap } from './flow/gap.ts';
import type { Pump } from './pump/pump.ts';

/** The circuits of the training gearbox. Forward and reverse pass through the transfer seal; direct does not. */
export const CIRCUITS = ['forward', 'reverse', 'direct'] as const;
/** Name of a clutch circuit. */
export type Circuit = (typeof CIRCUITS)[number];

/** Ways out of one clutch circuit. */
export interface CircuitLeaks {
  readonly rings: Gap;
  readonly transferSeal: Gap;
  readonly pistonSeal: Gap;
  readonly openPortArea: number;
}

/** All that the steady state needs to know of a gearbox, healthy or not. */
export interface Plant {
  readonly pump: Pump;
  readonly lineClearances: Gap;
  readonly regulatorBore: Gap;
  readonly feedArea: number;
  readonly feedBand: number;
  readonly clutch: Clutch;
  readonly leaks: Readonly<Record<Circuit, CircuitLeaks>>;
  /** What the line command is multiplied by; 1 when healthy. */
  readonly lineCommandFactor: number;
  /** What both published kinematic viscosities are multiplied by; 1 for the fluid as poured. */
  readonly viscosityFactor: number;
  /** What the turbine sensor reads at rest [rpm]; 0 when healthy. */
  readonly turbineSensorRestRpm: number;
}

const sound = (passesTransferSeal: boolean): CircuitLeaks => ({
  rings: { width: 0.377, height: 25e-6, length: 2e-3 },
  transferSeal: { width: passesTransferSeal ? 0.014 : 0, height: 0, length: 3e-3 },
  pistonSeal: { width: 0.04, height: 0, length: 1.5e-3 },
  openPortArea: 0,
});

/** The training gearbox. Invented for teaching; no maker's gearbox. */
export const gearbox: Plant = {
  pump: {
    displacement: 15e-6,
    slip: 3e-8,
    suctionResistance: 3.4e8,
    suctionLimit: 60e3,
    air: 0,
  },
  lineClearances: { width: 0.4, height: 45e-6, length: 4e-3 },
  regulatorBore: { width: 0.05, height: 0, length: 6e-3 },
  feedArea: holeArea(1.9e-3),
  feedBand: 20e3,
  clutch: {
    area: 85e-4,
    springForce: 900,
    strokeVolume: 30e-6,
    compliance: 4e-12,
    faces: 10,
    meanRadius: 0.065,
    friction: 0.13,
  },
  leaks: { forward: sound(true), reverse: sound(true), direct: sound(false) },
  lineCommandFactor: 1,
  viscosityFactor: 1,
  turbineSensorRestRpm: 0,
};

/** Converter, engine and vehicle of the training gearbox; invented like the rest. */
export const drivetrain = {
  /** Converter capacity [rpm/sqrt(N m)]. */
  capacity: 170,
  stallTorqueRatio: 2,
  engineInertia: 0.18,
  turbineInertia: 0.035,
  idleRpm: 700,
  ratios: { forward: 4, reverse: 3.4, direct: 1.5 },
  finalDrive: 3.5,
  wheelRadius: 0.35,
  mass: 2000,
  drag: 150,
} as const;

/** Commands of the training gearbox at two standard test points [Pa]. */
export const testPoints = {
  idle: { engineRpm: 700, line: 600e3, clutch: 400e3 },
  load: { engineRpm: 1500, line: 1000e3, clutch: 800e3 },
} as const;
