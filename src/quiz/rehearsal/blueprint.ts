/** What a rehearsal is made of: a proposal of this site, and of no examination anywhere. */

/** How many questions. */
export const REHEARSAL_SIZE = 50;
/** What the clock is set to [min]. */
export const REHEARSAL_MINUTES = 60;

/** Of a hundred questions as many from each area, in the order of the course. */
export const shares = {
  fluid: 12,
  circuits: 14,
  selection: 12,
  complaint: 14,
  log: 16,
  tests: 16,
  parts: 10,
  proof: 6,
} as const;
export type Area = keyof typeof shares;
export const areas = Object.keys(shares) as readonly Area[];

/**
 * What a question may be besides, and how often: in a setting that no lesson shows, about which test comes next, about a car
 * with nothing wrong. Where the bank has too few of a kind, a rehearsal has fewer.
 */
export const traits = { unseen: 1 / 3, next: 1 / 10, healthy: 1 / 8 } as const;
export type Trait = keyof typeof traits;
export const traitNames = Object.keys(traits) as readonly Trait[];

/** As many questions of a kind belong in a rehearsal of a size. */
export const wanted = (trait: Trait, size: number): number => Math.round(traits[trait] * size);
