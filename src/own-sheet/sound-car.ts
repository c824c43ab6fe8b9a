/** What is told of the sound car of a sheet. Apart from what works it out, which the page leaves to a worker. */
import { COLD_C, HOT_C } from '../car/cold-and-hot.ts';
import type { ShopTest, Tap } from '../car/shop-tests.ts';
import type { Circuit, DriveRange } from '../engine/index.ts';

export type Warm = 'cold' | 'hot';
export const WARM_C: Readonly<Record<Warm, number>> = { cold: COLD_C, hot: HOT_C };
export const RANGES = ['drive', 'reverse'] as const satisfies readonly DriveRange[];

/** Something that the engine takes and a foreman would ask about. Pressures in kPa, torques in N·m. */
export type Remark =
  | { readonly kind: 'gears'; readonly first: number; readonly third: number }
  | { readonly kind: 'loadSpeed'; readonly idleRpm: number; readonly loadRpm: number }
  | { readonly kind: 'lineFalls'; readonly idle: number; readonly load: number }
  | { readonly kind: 'spare'; readonly spareL: number; readonly fillL: number }
  | { readonly kind: 'idleApart' | 'loadApart'; readonly own: number; readonly tested: number }
  | {
      readonly kind: 'short';
      readonly tap: Tap;
      readonly test: ShopTest;
      readonly reads: number;
      readonly wanted: number;
    }
  | {
      readonly kind: 'stall';
      readonly range: DriveRange;
      readonly torque: number;
      readonly needs: number;
      readonly most: number;
    }
  | { readonly kind: 'neverStops'; readonly range: DriveRange; readonly warm: Warm };

export interface Sound {
  /** Pressures of the sound car and what was commanded [kPa]. */
  readonly taps: Readonly<
    Record<Tap, Readonly<Record<ShopTest, { readonly reads: number; readonly wanted: number }>>>
  >;
  /** From selection until the turbine stands [s]; null if it never does. */
  readonly stops: Readonly<Record<DriveRange, Readonly<Record<Warm, number | null>>>>;
  /** Torque that each clutch can hold under load, cold and hot [N·m]. */
  readonly holds: Readonly<Record<Circuit, Readonly<Record<Warm, number>>>>;
  /** What the converter gives with the turbine standing: at the load test, and at the most throttle of the story. */
  readonly gives: {
    readonly load: { readonly rpm: number; readonly torque: number };
    readonly stall: { readonly rpm: number; readonly torque: number };
  };
  readonly remarks: readonly Remark[];
}
