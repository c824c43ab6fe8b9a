import { holeArea } from '../flow/hole.ts';
import { CIRCUITS } from '../transmission/circuits.ts';
import type { Circuit, PerCircuit } from '../transmission/circuits.ts';
import type { CircuitLeaks, Plant } from '../transmission/plant.ts';
import { perCircuit } from '../transmission/from-sheet.ts';
import { training } from '../transmission/transmissions.ts';

/** One fault: what it changes, from healthy to worst, by one severity from 0 to 1. */
export interface FaultKind {
  /** What the severity is a measure of, in words. */
  readonly measure: string;
  /** Unit of `healthyIn` and `worst`, as people read it. */
  readonly unit: string;
  /** The amount in a sound plant, in the circuit where the fault sits in one. */
  readonly healthyIn: (plant: Plant, circuit: Circuit) => number;
  readonly worst: number;
  /** True where the fault sits in one circuit and the request says which. */
  readonly oneCircuit: boolean;
  /** True where there is no half of it: severity is 0 or 1. */
  readonly onOff?: boolean;
  /** The plant with `amount` (between healthy and worst) of this fault. */
  readonly apply: (
    plant: Plant,
    amount: number,
    at: { readonly circuit: Circuit; readonly severity: number },
  ) => Plant;
}

function withLeaks(
  plant: Plant,
  circuit: Circuit,
  change: (leaks: CircuitLeaks) => Partial<CircuitLeaks>,
): Plant {
  const leaks = plant.leaks[circuit];
  return { ...plant, leaks: { ...plant.leaks, [circuit]: { ...leaks, ...change(leaks) } } };
}

const withOne = <Value>(
  values: PerCircuit<Value>,
  circuit: Circuit,
  value: Value,
): PerCircuit<Value> => ({ ...values, [circuit]: value });

const none = (): number => 0;
const whole = (): number => 1;

/** The fifteen faults. Sizes are invented for the training transmission; the patterns are the trade's. */
export const faultKinds = {
  transferSeal: {
    measure: 'height of the crack in the transfer seal',
    unit: 'mm',
    healthyIn: none,
    worst: 0.4,
    oneCircuit: false,
    // A circuit that does not pass through the seal has no width there, so nothing opens.
    apply: (plant, mm) =>
      CIRCUITS.reduce(
        (changed, circuit) =>
          withLeaks(changed, circuit, ({ transferSeal }) => ({
            transferSeal: { ...transferSeal, height: mm / 1e3 },
          })),
        plant,
      ),
  },
  hardLip: {
    measure: 'gap that the hardened piston lip leaves at 0 °C and below',
    unit: 'mm',
    healthyIn: none,
    worst: 0.25,
    oneCircuit: true,
    apply: (plant, _mm, { circuit, severity }) => ({
      ...plant,
      lipHardness: withOne(plant.lipHardness, circuit, severity),
    }),
  },
  clutchControl: {
    measure: 'share of its command that the regulating valve loses when hot',
    unit: '',
    healthyIn: none,
    worst: 0.6,
    oneCircuit: true,
    apply: (plant, lost, { circuit }) => ({
      ...plant,
      valveFade: withOne(plant.valveFade, circuit, lost),
    }),
  },
  sealingRings: {
    measure: 'gap at the rotating sealing rings',
    unit: 'um',
    healthyIn: (plant, circuit) => plant.leaks[circuit].rings.height * 1e6,
    worst: 120,
    oneCircuit: true,
    apply: (plant, um, { circuit }) =>
      withLeaks(plant, circuit, ({ rings }) => ({ rings: { ...rings, height: um / 1e6 } })),
  },
  pistonSeal: {
    measure: 'gap at the piston seal',
    unit: 'mm',
    healthyIn: none,
    worst: 0.15,
    oneCircuit: true,
    apply: (plant, mm, { circuit }) =>
      withLeaks(plant, circuit, ({ pistonSeal }) => ({
        pistonSeal: { ...pistonSeal, height: mm / 1e3 },
      })),
  },
  pumpWear: {
    measure: 'slip coefficient of the pump',
    unit: '',
    healthyIn: (plant) => plant.pump.slip,
    worst: 1.6e-6,
    oneCircuit: false,
    apply: (plant, slip) => ({ ...plant, pump: { ...plant.pump, slip } }),
  },
  regulatorBore: {
    measure: 'wear gap of the regulator bore',
    unit: 'mm',
    healthyIn: none,
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
    healthyIn: whole,
    worst: 0.25,
    oneCircuit: false,
    apply: (plant, factor) => ({ ...plant, lineCommandFactor: factor }),
  },
  filter: {
    measure: 'resistance of the filter',
    unit: 'x',
    healthyIn: whole,
    worst: 60,
    oneCircuit: false,
    apply: (plant, factor) => ({
      ...plant,
      pump: { ...plant.pump, suctionResistance: plant.pump.suctionResistance * factor },
    }),
  },
  lowFluid: {
    measure: 'fluid missing',
    unit: 'L',
    healthyIn: none,
    worst: 3,
    oneCircuit: false,
    apply: (plant, litres) => ({ ...plant, missingFluid: litres / 1e3 }),
  },
  thinFluid: {
    measure: 'kinematic viscosity left',
    unit: 'x',
    healthyIn: whole,
    worst: 0.6,
    oneCircuit: false,
    apply: (plant, factor) => ({ ...plant, viscosityFactor: factor }),
  },
  feedRestriction: {
    measure: 'feed area left',
    unit: 'x',
    healthyIn: whole,
    worst: 0.1,
    oneCircuit: false,
    apply: (plant, factor) => ({
      ...plant,
      feed: { ...plant.feed, area: plant.feed.area * factor },
    }),
  },
  openPort: {
    measure: 'diameter of the open port',
    unit: 'mm',
    healthyIn: none,
    worst: 3,
    oneCircuit: true,
    apply: (plant, mm, { circuit }) =>
      withLeaks(plant, circuit, () => ({ openPortArea: holeArea(mm / 1e3) })),
  },
  frictionWear: {
    measure: 'friction left',
    unit: 'x',
    healthyIn: whole,
    worst: 0.28,
    oneCircuit: false,
    // Worn plates also take more stroke: twice the volume at the worst.
    apply: (plant, factor, { severity }) => ({
      ...plant,
      clutches: perCircuit((circuit) => {
        const clutch = plant.clutches[circuit];
        return {
          ...clutch,
          friction: clutch.friction * factor,
          strokeVolume: clutch.strokeVolume * (1 + severity),
        };
      }),
    }),
  },
  turbineSensor: {
    measure: 'turbine speed the sensor reads at rest',
    unit: 'rpm',
    healthyIn: none,
    worst: 300,
    oneCircuit: false,
    onOff: true,
    apply: (plant, rpm) => ({ ...plant, turbineSensorRestRpm: rpm }),
  },
} as const satisfies Record<string, FaultKind>;

/** Name of a fault. */
export type FaultId = keyof typeof faultKinds;
/** The names of the fifteen faults, in the order of the table. */
export const FAULT_IDS = Object.keys(faultKinds) as readonly FaultId[];

/**
 * What a fault amounts to in a sound training transmission and at its worst.
 *
 * @param id which fault [-]
 * @returns healthy and worst [the fault's own unit]
 * Range: any fault.
 * Source: training transmission, invented.
 * @example
 * faultSpan('sealingRings').worst // 120
 */
export function faultSpan(id: FaultId): { readonly healthy: number; readonly worst: number } {
  const kind: FaultKind = faultKinds[id];
  return { healthy: kind.healthyIn(training, 'forward'), worst: kind.worst };
}
