import { format } from '../../quantity/print.ts';
import { pressure } from '../../quantity/quantities.ts';
import type { Temp } from '../scale.ts';
import { words } from './words.en.ts';

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
export const COLUMN: Record<PathCircuit, number> = { forward: 92, reverse: 196, high: 300 };

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

/** What is drawn of a circuit: shut off, or on with a verdict or without one. */
export const verdictOf = ({ applied, holds }: PathCircuitState) =>
  !applied ? 'off' : holds === undefined ? 'on' : holds ? 'holds' : 'slips';

export function describeHydraulicPath({
  line,
  circuits,
  temp,
  faults = [],
}: HydraulicPathState): string {
  const { describe, faultIn } = words;
  const each = CIRCUITS.map((circuit) =>
    describe.circuit[verdictOf(circuits[circuit])]({
      circuit: words.circuits[circuit],
      pressure: circuits[circuit].label,
    }),
  );
  const places = faults.map(({ id, circuit }) => {
    const place = words.faults[id];
    return circuit ? faultIn[circuit]({ place }) : place;
  });
  return [
    describe.line[temp]({ pressure: line.label }),
    describe.circuits(each),
    describe.shared,
    ...(places.length > 0 ? [describe.ringed(places)] : []),
  ].join(' ');
}

export const hydraulicPathExample: HydraulicPathState = {
  line: { pressure: 0.6, label: format(600, pressure, 'si') },
  circuits: {
    forward: {
      pressure: 0.4,
      label: format(400, pressure, 'si'),
      applied: true,
      holds: true,
      feed: 0.6,
    },
    reverse: { pressure: 0, label: format(0, pressure, 'si'), applied: false },
    high: { pressure: 0, label: format(0, pressure, 'si'), applied: false },
  },
  temp: 'cold',
  flows: { pump: 10.2, leftOver: 7 },
};
