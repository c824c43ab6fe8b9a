/**
 * A name as it is compared: "Lock-up clutch", "lock up clutch" and "LOCKUP CLUTCH" are one. Letters and figures without
 * accents and in lower case, and nothing between them.
 *
 * @example
 * squeezed('Lock-up clutch')
 * // 'lockupclutch'
 */
export const squeezed = (name: string): string =>
  name
    .normalize('NFD')
    .replace(/[^\p{L}\p{N}]/gu, '')
    .toLowerCase();
