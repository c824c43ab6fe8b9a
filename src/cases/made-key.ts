/** What names a made case: the same three give the same car, on any device. */
export const LEVELS = [1, 2, 3] as const;
export type Level = (typeof LEVELS)[number];
/** On which of the two training transmissions. */
export const TRANSMISSIONS = ['training', 'second'] as const;
export type On = (typeof TRANSMISSIONS)[number];
export interface MadeKey {
  readonly seed: number;
  readonly level: Level;
  readonly on: On;
}
/** Largest seed; five digits can be read out over the phone. */
export const MOST_SEED = 99_999;
