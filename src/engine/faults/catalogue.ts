import { holeArea } from '../flow/hole.ts';
import type { Circuit, Plant } from '../gearbox.ts';

/** One fault: what it changes, from healthy to worst, by one severity from 0 to 1. */
export interface FaultKind {
  /** What the severity is a measure of, in words. */
  readonly measure: string;
  /** Unit of `healthy` and `worst`, as people read it. */
  readonly unit: string;
  readonly healthy: number;
  readonly worst: number;
  /** True where the fault sits in one circuit and the request says which. */
  readonly oneCircuit: boolean;
  /** True where there is no half of it: severity is 0 or 1. */
  readonly onOff?: boolean;
  /** The plant with `amount` (between healthy and worst) of this fault. */
  readonly apply: (plant: Plant, amount: number, circuit: Circuit) => Plant;
}

function withLeaks(
  plant: Plant,
  circuit: Circuit,
  change: (leaks: Plant['leaks'][Circuit]) => Plant['leaks'][Circuit],
): Plant {
  return { ...plant, leaks: { ...plant.leaks, [circuit]: change(plant.leaks[circuit]) } };
}

/** The thirteen faults. Sizes are invented for the training gearbox; the patterns are the trade's. */
export const faultKinds = {
  transferSeal: {
    measure: 'height of the crack in the transfer seal',
    unit: 'mm',
    healthy: 0,
    worst: 0.4,
    oneCircuit: false,
    apply: (plant, mm) =>
      (['forward', 'reverse'] as const).reduce(
        (changed, circuit) =>
          withLeaks(changed, circuit, (leaks) => ({
            ...leaks,
            transferSeal: { ...leaks.transferSeal, height: mm / 1e3 },
          })),
        plant,
      ),
  },
  sealingRings: {
    measure: 'gap at the rotating sealing rings',
    unit: 'um',
    healthy: 25,
    worst: 120,
    oneCircuit: true,
    apply: (plant, um, circuit) =>
      withLeaks(plant, circuit, (leaks) => ({
        ...leaks,
        rings: { ...leaks.rings, height: um / 1e6 },
      })),
  },
  pistonSeal: {
    measure: 'gap at the piston seal',
    unit: 'mm',
    healthy: 0,
    worst: 0.15,
    oneCircuit: true,
    apply: (plant, mm, circuit) =>
      withLeaks(plant, circuit, (leaks) => ({
        ...leaks,
        pistonSeal: { ...leaks.pistonSeal, height: mm / 1e3 },
      })),
  },
  pumpWear: {
    measure: 'slip coefficient of the pump',
    unit: '',
    healthy: 3e-8,
    worst: 6e-7,
    oneCircuit: false,
    apply: (plant, slip) => ({ ...plant, pump: { ...plant.pump, slip } }),
  },
  regulatorBore: {
    measure: 'wear gap of the regulator bore',
    unit: 'mm',
    healthy: 0,
    worst: 0.25,
    oneCircuit: false,
    apply: (plant, mm) => ({
      ...plant,
      regulatorBore: { ...plant.regulatorBore, height: mm / 1e3 },
    }),
  },
  pressureControl: {
    measure: 'line pressure had for line pressure commanded',
    unit: 'x',
    healthy: 1,
    worst: 0.45,
    oneCircuit: false,
    apply: (plant, factor) => ({ ...plant, lineCommandFactor: factor }),
  },
  filter: {
    measure: 'resistance of the filter',
    unit: 'x',
    healthy: 1,
    worst: 60,
    oneCircuit: false,
    apply: (plant, factor) => ({
      ...plant,
      pump: { ...plant.pump, suctionResistance: plant.pump.suctionResistance * factor },
    }),
  },
  lowFluid: {
    measure: 'air in what the pump draws',
    unit: '',
    healthy: 0,
    worst: 0.5,
    oneCircuit: false,
    apply: (plant, air) => ({ ...plant, pump: { ...plant.pump, air } }),
  },
  thinFluid: {
    measure: 'kinematic viscosity left',
    unit: 'x',
    healthy: 1,
    worst: 0.6,
    oneCircuit: false,
    apply: (plant, factor) => ({ ...plant, viscosityFactor: factor }),
  },
  feedRestriction: {
    measure: 'feed area left',
    unit: 'x',
    healthy: 1,
    worst: 0.1,
    oneCircuit: false,
    apply: (plant, factor) => ({ ...plant, feedArea: plant.feedArea * factor }),
  },
  openPort: {
    measure: 'diameter of the open port',
    unit: 'mm',
    healthy: 0,
    worst: 3,
    oneCircuit: true,
    apply: (plant, mm, circuit) =>
      withLeaks(plant, circuit, (leaks) => ({ ...leaks, openPortArea: holeArea(mm / 1e3) })),
  },
  frictionWear: {
    measure: 'friction left',
    unit: 'x',
    healthy: 1,
    worst: 0.5,
    oneCircuit: false,
    // Worn plates also take more stroke: twice the volume at the worst.
    apply: (plant, factor) => ({
      ...plant,
      clutch: {
        ...plant.clutch,
        friction: plant.clutch.friction * factor,
        strokeVolume: plant.clutch.strokeVolume * (1 + (1 - factor) / 0.5),
      },
    }),
  },
  turbineSensor: {
    measure: 'turbine speed the sensor reads at rest',
    unit: 'rpm',
    healthy: 0,
    worst: 300,
    oneCircuit: false,
    onOff: true,
    apply: (plant, rpm) => ({ ...plant, turbineSensorRestRpm: rpm }),
  },
} as const satisfies Record<string, FaultKind>;

/** Name of a fault. */
export type FaultId = keyof typeof faultKinds;
/** The names of the thirteen faults, in the order of the table. */
export const FAULT_IDS = Object.keys(faultKinds) as readonly FaultId[];
