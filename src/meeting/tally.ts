/** Hands in a room, by option. Nothing is known of whose they are. */

/** More hands than a shop has; a key that is held down ends here. */
export const MOST_HANDS = 999;

export type Hands = readonly number[];

/** Hands of a vote with so many options; what does not fit it is left out. */
export const handsFor = (options: number, kept: Hands = []): Hands =>
  Array.from({ length: options }, (_, i) => within(kept[i] ?? 0));

const within = (hands: number): number =>
  Number.isFinite(hands) ? Math.min(MOST_HANDS, Math.max(0, Math.round(hands))) : 0;

/** One more, or with -1 one less. An option that is not there changes nothing. */
export const withHand = (hands: Hands, option: number, by: 1 | -1): Hands =>
  hands.map((now, i) => (i === option ? within(now + by) : now));

/** What was typed as a count of hands, nothing being none; undefined where it is no count. */
export const handsTyped = (text: string): number | undefined => {
  const typed = /^\d*$/.test(text.trim()) ? Number(text) : Number.NaN;
  return typed <= MOST_HANDS ? typed : undefined;
};

export const withTyped = (hands: Hands, option: number, typed: number): Hands =>
  hands.map((now, i) => (i === option ? within(typed) : now));

export const allHands = (hands: Hands): number => hands.reduce((sum, now) => sum + now, 0);

/** Of the most hands, 0 to 1: how long the bar of an option is. */
export const barOf = (hands: Hands, option: number): number => {
  const most = Math.max(...hands, 0);
  return most === 0 ? 0 : (hands[option] ?? 0) / most;
};
