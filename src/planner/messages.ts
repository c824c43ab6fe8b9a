import type {
  ByName,
  CarState,
  Contradiction,
  Finding,
  Fit,
  Grounds,
  Name,
  Outcome,
  Ranked,
  TakenReading,
  Test,
  TwoFaults,
} from '../diagnosis/index.ts';
import type { Working } from '../ui/page-worker.ts';

/** What the planner is asked about one car. */
export interface Asked {
  /** The table of its transmission, as text. */
  readonly table: string;
  /** Before the repair: these are weighed. */
  readonly readings: readonly TakenReading[];
  /** After it: these are held against each other alone. */
  readonly after: readonly TakenReading[];
  readonly state: CarState;
}

/** What a page asks. Each question has a number of its own, which its answers name; a later one ends an earlier. */
export type Ask =
  | { readonly kind: 'think'; readonly turn: number; readonly asked: Asked }
  /** Which tests the planner would take on a car, one after the other. */
  | {
      readonly kind: 'way';
      readonly turn: number;
      readonly table: string;
      readonly state: CarState;
      readonly most: number;
    }
  /** What a test read that the planner wanted on its way. */
  | { readonly kind: 'read'; readonly turn: number; readonly reading: TakenReading };

/** A test worth its minutes, with what it should read under the likeliest causes. */
export interface Proposal extends Ranked {
  readonly expects: readonly { readonly fault: Name; readonly value: number }[];
}
export interface Listed {
  readonly faults: readonly Finding[];
  readonly fit: Fit;
  /** The list before the first reading, and after each. */
  readonly steps: readonly ByName[];
}
export interface Clashing {
  readonly before: readonly Contradiction[];
  readonly after: readonly Contradiction[];
}
/** A test of the planner's way, and how its list stood then. */
export interface WayTest {
  readonly reading: TakenReading;
  readonly minutes: number;
  readonly top: Finding;
}

/** What is answered, piece by piece as it is worked out. */
export type Answer =
  | {
      readonly kind: 'listed';
      readonly turn: number;
      readonly listed: Listed;
      /** Of the table; once, with the first list that goes by it. */
      readonly grounds?: Grounds;
    }
  | {
      readonly kind: 'ranked';
      readonly turn: number;
      readonly next: readonly Proposal[];
      /** What the best of them would rule out. */
      readonly outcomes: readonly Outcome[];
    }
  | { readonly kind: 'clashing'; readonly turn: number; readonly clashing: Clashing }
  /** The last of them. Two faults together, where there are readings enough to tell them from one, and what fits by that. */
  | {
      readonly kind: 'fits';
      readonly turn: number;
      readonly fit: Fit;
      readonly two: TwoFaults | null;
    }
  | { readonly kind: 'wants'; readonly turn: number; readonly test: Test }
  | { readonly kind: 'way'; readonly turn: number; readonly tests: readonly WayTest[] }
  /** The table is none. */
  | { readonly kind: 'noTable'; readonly turn: number }
  /** The worker is lost, or what it runs did not come. */
  | { readonly kind: 'lost' };

/** Begins to think; the answers are told as they come. */
export type Think = (told: (answer: Answer) => void) => Working<Ask>;
