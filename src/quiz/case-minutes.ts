/** What the readings of a short case cost, one after the other: their own minutes, and set-ups that are not there yet. */

export interface Priced {
  readonly id: string;
  readonly minutes: number;
  /** How warm the fluid is for it. */
  readonly warmth?: string | undefined;
  /** With the minutes of each, the warmth among them. */
  readonly setUps: readonly { readonly id: string; readonly minutes: number }[];
}

export const arrivals = ['frost', 'cold', 'hot'] as const;
/** How warm the car comes in. */
export type Arrives = (typeof arrivals)[number];

export function minutesOf(taken: readonly Priced[], arrives: Arrives): number {
  const there = new Set<string>();
  let warmth: string = arrives;
  let sum = 0;
  for (const { minutes, setUps, warmth: wanted } of taken) {
    sum += minutes;
    for (const setUp of setUps) {
      const isThere = setUp.id === wanted ? warmth === wanted : there.has(setUp.id);
      if (!isThere) sum += setUp.minutes;
      if (setUp.id !== wanted) there.add(setUp.id);
    }
    warmth = wanted ?? warmth;
  }
  return sum;
}
