import type { TransmissionSheet } from '../engine/index.ts';
import type { Sound } from './sound-car.ts';

/** What the page asks of the worker. */
export interface Ask {
  /** The planner's table, a minute of work; or the readings of the sound car, half a second. */
  readonly kind: 'table' | 'sound';
  readonly sheet: TransmissionSheet;
}

/** What the worker answers. */
export type Answer =
  | { readonly kind: 'progress'; readonly share: number }
  | { readonly kind: 'table'; readonly text: string }
  | { readonly kind: 'sound'; readonly sound: Sound }
  /** The engine does not settle on these numbers. */
  | { readonly kind: 'failed' }
  /** The browser ended the work, or the script did not come. */
  | { readonly kind: 'stopped' };
