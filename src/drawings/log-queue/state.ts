import { words } from './words.en.ts';

/** A line that brings so many values in a second, and lists of so many items that share it. */
export interface LogQueueState {
  readonly slots: number;
  readonly lists: readonly number[];
}
export const logQueueExample: LogQueueState = { slots: 20, lists: [10, 4, 2] };

/** Whose turn a slot is: 0 is the turbine's. */
export const turnOf = (slot: number, items: number): number => slot % items;

/** How often the turbine's turn comes in that second. */
export const turnsOf = ({ slots }: LogQueueState, items: number): number =>
  Array.from({ length: slots }, (_, slot) => turnOf(slot, items)).filter((turn) => turn === 0)
    .length;

/** From slot to slot, where it is the turn of others. */
export const gapsOf = (
  { slots }: LogQueueState,
  items: number,
): readonly (readonly [number, number])[] =>
  Array.from({ length: slots }, (_, slot) => slot)
    .filter((slot) => turnOf(slot, items) === 0 && items > 1)
    .map((slot) => [slot + 1, Math.min(slots, slot + items)] as const);

export const describeLogQueue = (state: LogQueueState): string =>
  [
    words.line({ slots: String(state.slots) }),
    ...state.lists.map((items) =>
      words.list({ items: String(items), turns: String(turnsOf(state, items)) }),
    ),
    words.end,
  ].join(' ');
