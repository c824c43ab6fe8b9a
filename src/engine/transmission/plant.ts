import type { Clutch } from '../clutch/torque.ts';
import type { Drivetrain } from '../drive/drivetrain.ts';
import type { Gap } from '../flow/gap.ts';
import type { FluidSpec } from '../fluid/fluid.ts';
import type { Sump } from '../pump/low-level.ts';
import type { Pump } from '../pump/pump.ts';
import type { Circuit, Gear, PerCircuit } from './circuits.ts';

/** Ways out of one clutch circuit. */
export interface CircuitLeaks {
  readonly rings: Gap;
  /** No width where the circuit does not pass through the transfer seal. */
  readonly transferSeal: Gap;
  readonly pistonSeal: Gap;
  /** The hardened lip of the piston at the temperature of the fluid; see atTemperature. */
  readonly hardLip: Gap;
  readonly openPortArea: number;
}

/** Feed of one clutch: a hole and the passage behind it. */
export interface Feed {
  /** Area of the hole [m2]. */
  readonly area: number;
  /** Resistance of the passage [1/m3]: pressure lost = resistance x dynamic viscosity x flow. */
  readonly passage: number;
  /** By how much the clutch must fall short of command for the valve to stand wide open [Pa]. */
  readonly band: number;
}

/** A pair of commands at an engine speed [rpm], [Pa]. */
export interface TestPoint {
  readonly engineRpm: number;
  readonly line: number;
  readonly clutch: number;
}

/** The rules by which the controller commands pressure [Pa]. */
export interface CommandRules {
  /** Clutch commanded: this many times what the controller believes is needed. */
  readonly margin: number;
  readonly clutchLeast: number;
  readonly clutchMost: number;
  /** Line commanded: this much above the clutch, and never under lineLeast. */
  readonly lineLead: number;
  readonly lineLeast: number;
  /** What Reverse multiplies a clutch command by. */
  readonly reverseFactor: number;
}

/** A transmission with whatever is wrong with it: all that the solvers need to know. */
export interface Plant {
  readonly name: string;
  readonly pump: Pump;
  readonly sump: Sump;
  /** Fluid missing from the fill [m3]; 0 when healthy. */
  readonly missingFluid: number;
  readonly lineClearances: Gap;
  /** Holes that bleed the line at all times: solenoid bleeds and lubrication [m2]. */
  readonly bleedArea: number;
  readonly regulatorBore: Gap;
  readonly feed: Feed;
  readonly clutches: PerCircuit<Clutch>;
  readonly leaks: PerCircuit<CircuitLeaks>;
  /** How far the piston lip of a circuit has hardened, 0 to 1; it opens a gap in the cold. */
  readonly lipHardness: PerCircuit<number>;
  /** Share of its command that a circuit's regulating valve loses when hot, 0 to 1. */
  readonly valveFade: PerCircuit<number>;
  /** What a circuit's command is multiplied by at the temperature of the fluid; see atTemperature. */
  readonly valveHolds: PerCircuit<number>;
  /** What the line command is multiplied by; 1 when healthy. */
  readonly lineCommandFactor: number;
  /** What both published kinematic viscosities are multiplied by; 1 for the fluid as poured. */
  readonly viscosityFactor: number;
  /** What the turbine sensor reads at rest [rpm]; 0 when healthy. */
  readonly turbineSensorRestRpm: number;
  /** What the cooler takes: pressure to spare [Pa] and resistance [1/m3]. */
  readonly cooler: { readonly pressure: number; readonly resistance: number };
  readonly drive: Drivetrain;
  readonly testPoints: { readonly idle: TestPoint; readonly load: TestPoint };
  readonly commands: CommandRules;
  /** What the controller and the workshop take for sound, whatever has happened since. */
  readonly healthy: { readonly clutches: PerCircuit<Clutch>; readonly feedArea: number };
  /** The fluid it is filled with. */
  readonly fluid: FluidSpec;
  /** Circuits under pressure in each gear. */
  readonly applyChart: Readonly<Record<Gear, readonly Circuit[]>>;
}
