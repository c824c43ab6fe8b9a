import type { EngagementRead } from '../../log/measure.ts';

export interface Chosen {
  readonly read: EngagementRead;
  /** Its number in the log, from 0. */
  readonly index: number;
}
/** The coolest and the warmest engagement in one range. */
export interface Pair {
  readonly range: 'drive' | 'reverse' | 'unknown';
  readonly cold: Chosen;
  readonly hot: Chosen;
}

/** Nearer than this [°C] two engagements are at one temperature. */
const APART = 20;

/** Cold beside hot, by range, where the log has both. Among several at one temperature the later one counts: it was warmed through. */
export function coldAndHot(engagements: readonly EngagementRead[]): readonly Pair[] {
  return (['drive', 'reverse', 'unknown'] as const).flatMap((range) => {
    const all = engagements
      .map((read, index) => ({ read, index }))
      .filter(({ read }) => read.selection.range === range && read.tempC !== null)
      .sort((a, b) => (a.read.tempC ?? 0) - (b.read.tempC ?? 0));
    const [cold] = all;
    const hot = all.at(-1);
    if (cold === undefined || hot === undefined) return [];
    return (hot.read.tempC ?? 0) - (cold.read.tempC ?? 0) < APART ? [] : [{ range, cold, hot }];
  });
}
