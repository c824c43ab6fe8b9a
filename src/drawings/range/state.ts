import { words } from './words.en.ts';

export type Range = 'P' | 'R' | 'N' | 'D';

export interface RangeState {
  range: Range;
  /** Mechanical only: the cable holds the plate short of its notch. */
  misSet?: boolean | undefined;
  /** How much of its port the manual valve then leaves open, 0 to 1; a half where left out. */
  portOpen?: number | undefined;
  failSafe?: boolean | undefined;
  /** Mechanical fail-safe with a default gear held, instead of venting to Neutral. */
  defaultGear?: boolean | undefined;
  /** Electronic fail-safe while the vehicle still rolls: Neutral first, Park later. */
  rolling?: boolean | undefined;
  /** False: the controller has no power. Then a spring moves what oil held, and nobody decides anything. */
  power?: boolean | undefined;
  /** Paths to draw dead or alive against what follows from the rest: for a fault such as a broken cable. */
  alive?: { cable?: boolean; solenoids?: boolean; selector?: boolean } | undefined;
  /** Shares of 1000 kPa, and L/min into the clutch that is fed; the training transmission at cold idle where left out. */
  oil?: { readonly line: number; readonly clutch: number; readonly feedLmin: number } | undefined;
}

export const rangeExample: RangeState = { range: 'P' };
/** As `circuitExample` has it. */
export const OIL = { line: 0.6, clutch: 0.4, feedLmin: 0.6 } as const;

/** In fail-safe or without power, a controller commands nothing. */
export const gaveUp = (s: RangeState): boolean => s.failSafe === true || s.power === false;

/** Without power the spring of the electronic kind drops the pawl in once it can; at speed it would only ratchet. */
export const isParked = (s: RangeState, kind: 'electronic' | 'mechanical'): boolean =>
  kind === 'electronic' && gaveUp(s) ? !s.rolling : s.range === 'P';

/** Whether the wires to the clutch solenoid valves still do something. */
export const solenoidsAlive = (s: RangeState): boolean => s.alive?.solenoids ?? !gaveUp(s);

/** The range whose clutch is fed, or none. */
export function fedRange(s: RangeState, kind: 'electronic' | 'mechanical'): 'R' | 'D' | undefined {
  if (s.alive?.solenoids === false) return undefined;
  if (gaveUp(s) && !(kind === 'mechanical' && s.defaultGear)) return undefined;
  return s.range === 'R' || s.range === 'D' ? s.range : undefined;
}

const { describe, ranges } = words;
const joined = (sentences: readonly (string | false)[]): string =>
  sentences.filter((sentence) => sentence !== false).join(' ');

export function describeElectronic(s: RangeState): string {
  const parked = isParked(s, 'electronic');
  const fed = fedRange(s, 'electronic');
  const pawl = parked ? 'in' : 'out';
  return joined([
    describe.wire({ range: ranges[s.range] }),
    s.power === false
      ? describe.wireOff[pawl]
      : s.failSafe
        ? describe.wireFailSafe[pawl]
        : fed
          ? describe.wireFeeds({ range: ranges[fed] })
          : describe.wireFeedsNone,
    describe.pawl[parked ? 'in' : s.power === false ? 'notYet' : 'out'],
    describe.motor,
    s.alive?.selector === false && describe.selectorDead,
    s.alive?.solenoids === false && describe.solenoidsDead,
  ]);
}

export function describeMechanical(s: RangeState): string {
  const fed = fedRange(s, 'mechanical') ? 'fed' : 'none';
  return joined([
    describe.cable({ range: ranges[s.range] }),
    describe.stop[s.misSet ? 'hard' : 'right'],
    describe.valve[s.range],
    s.power === false && describe.cableOff[fed],
    s.power !== false && s.failSafe === true && describe.cableFailSafe[fed],
    describe.pawl[isParked(s, 'mechanical') ? 'in' : 'released'],
    s.alive?.cable === false && describe.cableBroken,
    s.alive?.solenoids === false && describe.solenoidsDead,
  ]);
}
