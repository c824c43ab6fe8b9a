import type { Temp } from './scale.ts';

export type PathCircuit = 'forward' | 'reverse' | 'high';

export interface PathCircuitState {
  /** Share of 1000 kPa. */
  pressure: number;
  /** In the reader's units. */
  label: string;
  applied: boolean;
  /** Left out: no verdict is drawn. */
  holds?: boolean | undefined;
  /** L/min through the feed; left out, none is drawn. */
  feed?: number | undefined;
}

/** Fault ids of the engine, repeated as plain words because drawings import no physics. */
export type FaultId =
  | 'transferSeal'
  | 'hardLip'
  | 'clutchControl'
  | 'sealingRings'
  | 'pistonSeal'
  | 'pumpWear'
  | 'regulatorBore'
  | 'pressureControl'
  | 'filter'
  | 'lowFluid'
  | 'thinFluid'
  | 'feedRestriction'
  | 'openPort'
  | 'frictionWear'
  | 'turbineSensor';

export interface HydraulicPathState {
  line: { pressure: number; label: string };
  circuits: Record<PathCircuit, PathCircuitState>;
  temp: Temp;
  flows: { pump: number; leftOver: number };
  /** Where to look: each is ringed on the drawing and named in the sentence. */
  faults?: readonly { id: FaultId; circuit?: PathCircuit | undefined }[] | undefined;
}

export const CIRCUITS: readonly PathCircuit[] = ['forward', 'reverse', 'high'];
export const CIRCUIT_NAMES: Record<PathCircuit, string> = {
  forward: 'Forward',
  reverse: 'Reverse',
  high: 'High',
};
export const COLUMN: Record<PathCircuit, number> = { forward: 92, reverse: 196, high: 300 };

const FAULT_NAMES: Record<FaultId, string> = {
  transferSeal: 'the transfer seal',
  hardLip: 'the piston lip',
  clutchControl: 'the clutch regulating valve',
  sealingRings: 'the sealing rings',
  pistonSeal: 'the piston seal',
  pumpWear: 'the pump',
  regulatorBore: 'the regulator bore',
  pressureControl: 'the pressure control solenoid',
  filter: 'the filter',
  lowFluid: 'the fluid level',
  thinFluid: 'the fluid itself',
  feedRestriction: 'the feed hole',
  openPort: 'a port that stands open',
  frictionWear: 'the friction plates',
  turbineSensor: 'the turbine speed sensor',
};

/** Where each fault sits: in a circuit's own column, or at a fixed place. */
export function faultPlace(
  id: FaultId,
  circuit: PathCircuit,
): { x: number; y: number; r?: number } {
  const x = COLUMN[circuit];
  switch (id) {
    case 'transferSeal':
      return { x: 144, y: 172 };
    case 'sealingRings':
      return { x: x - 9, y: 103 };
    case 'pistonSeal':
    case 'hardLip':
      return { x: x - 28, y: 76 };
    case 'clutchControl':
      return { x, y: 252 };
    case 'frictionWear':
      return { x: x + 20, y: 52 };
    case 'openPort':
      return { x, y: 209 };
    case 'feedRestriction':
      return { x, y: 233 };
    case 'pumpWear':
      // Around the whole pump: a ring among its gears is taken for one of them.
      return { x: 60, y: 348, r: 30 };
    case 'regulatorBore':
      return { x: 176, y: 348 };
    case 'pressureControl':
      return { x: 216, y: 360 };
    case 'filter':
      return { x: 60, y: 438 };
    case 'lowFluid':
      return { x: 196, y: 424 };
    case 'thinFluid':
      return { x: 260, y: 438 };
    case 'turbineSensor':
      return { x: 366, y: 59 };
  }
}

export function describeHydraulicPath(s: HydraulicPathState): string {
  const each = CIRCUITS.map((c) => {
    const k = s.circuits[c];
    const verdict = k.holds === undefined ? '' : k.holds ? ' and holds' : ' and slips';
    return k.applied
      ? `${CIRCUIT_NAMES[c]} is applied with ${k.label}${verdict}`
      : `${CIRCUIT_NAMES[c]} is not applied`;
  }).join('; ');
  const marks = (s.faults ?? []).map(
    (f) => `${FAULT_NAMES[f.id]}${f.circuit ? ` (${CIRCUIT_NAMES[f.circuit].toLowerCase()})` : ''}`,
  );
  const ringed = marks.length > 0 ? ` Ringed on the drawing: ${marks.join(', ')}.` : '';
  return `The whole hydraulic path, with ${s.temp} fluid and line pressure at ${s.line.label}. ${each}. Forward and reverse share the transfer seal; high does not pass through it.${ringed}`;
}

export const hydraulicPathExample: HydraulicPathState = {
  line: { pressure: 0.6, label: '600 kPa' },
  circuits: {
    forward: { pressure: 0.4, label: '400 kPa', applied: true, holds: true, feed: 0.6 },
    reverse: { pressure: 0, label: '0 kPa', applied: false },
    high: { pressure: 0, label: '0 kPa', applied: false },
  },
  temp: 'cold',
  flows: { pump: 10.2, leftOver: 7 },
};
