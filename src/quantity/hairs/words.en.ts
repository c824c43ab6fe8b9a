/** A width in human hairs: what the number beside it feels like. */
export const words = {
  none: 'no crack',
  fraction: 'a fraction of a hair',
  half: 'half a hair',
  /** From one. */
  whole: ['one hair', 'two hairs', 'three hairs', 'four hairs', 'five hairs', 'six hairs'],
  oneAndAHalf: 'one and a half hairs',
  many: (p: { count: string }) => `${p.count} hairs`,
};
