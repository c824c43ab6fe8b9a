import { words } from './words.en.ts';

/** Where air can get away. */
export type AirLeak = 'rings' | 'pistonSeal' | 'openPort' | 'transferSeal';

export interface AirRigState {
  /** A circuit in the case, or the transfer seal on a plate by itself. */
  part: 'circuit' | 'seal';
  /** Of the supply, behind the hole [%]; nothing where the valve is shut. */
  held: number | null;
  /** Fluid was put in first. */
  wet: boolean;
  /** The piston has gone over. */
  applied: boolean;
  /** What gets away in each place [g/s]; what is left out is tight. */
  leaks: Partial<Readonly<Record<AirLeak, number>>>;
  labels: { supply: string; hole: string; held: string };
}

export const airRigExample: AirRigState = {
  part: 'circuit',
  held: 89,
  wet: true,
  applied: true,
  leaks: { rings: 0.57 },
  labels: { supply: '275 kPa', hole: '1.50 mm', held: '89 %' },
};

/** The place where most gets away. */
export function worstLeak({ leaks }: AirRigState): AirLeak | null {
  const [first] = (Object.entries(leaks) as [AirLeak, number][]).toSorted(
    ([, one], [, other]) => other - one,
  );
  return first?.[0] ?? null;
}

export function describeAirRig(state: AirRigState): string {
  const { describe } = words;
  const { held, labels, part, wet, applied } = state;
  const worst = worstLeak(state);
  return [
    describe.rig(labels),
    describe.parts[part],
    held === null ? describe.shut : describe.held(labels),
    ...(held === null || part === 'seal' ? [] : [applied ? describe.applied : describe.back]),
    ...(held === null ? [] : [worst === null ? describe.tight : describe.leaks[worst]]),
    ...(wet ? [describe.wet] : []),
  ].join(' ');
}
