/** What came of a rehearsal, area by area. Right is right altogether; a part of several is not. */
import type { Result } from '../result.ts';
import { areas, type Area } from './blueprint.ts';

export interface Rehearsed {
  readonly id: string;
  readonly lesson: string;
  readonly area: Area;
  /** Left out where it was not answered. */
  readonly result?: Result | undefined;
}
export interface AreaScore {
  readonly area: Area;
  readonly asked: number;
  readonly right: number;
  readonly open: number;
}

/** In the order of the areas; one without a question is left out. */
export function scoreByArea(items: readonly Rehearsed[]): readonly AreaScore[] {
  return areas.flatMap((area) => {
    const of = items.filter((item) => item.area === area);
    if (of.length === 0) return [];
    return {
      area,
      asked: of.length,
      right: of.filter(({ result }) => result === 'right').length,
      open: of.filter(({ result }) => result === undefined).length,
    };
  });
}

/** An area is weak where more than one question in four was not right. */
const WEAK_FROM = 1 / 4;

const missedShare = ({ asked, right }: AreaScore): number => (asked - right) / asked;

export interface ReadNext extends AreaScore {
  /** The lessons of the questions that were not right, the one with most of them first. */
  readonly lessons: readonly { readonly lesson: string; readonly missed: number }[];
}

/** The weak areas, the weakest first, and of two alike the one that was asked more. */
export const readNext = (items: readonly Rehearsed[]): readonly ReadNext[] =>
  scoreByArea(items)
    .filter((score) => missedShare(score) > WEAK_FROM)
    .sort((a, b) => missedShare(b) - missedShare(a) || b.asked - a.asked)
    .map((score) => ({ ...score, lessons: lessonsMissed(items, score.area) }));

function lessonsMissed(items: readonly Rehearsed[], area: Area): ReadNext['lessons'] {
  const missed = new Map<string, number>();
  for (const item of items) {
    if (item.area !== area || item.result === 'right') continue;
    missed.set(item.lesson, (missed.get(item.lesson) ?? 0) + 1);
  }
  return [...missed]
    .map(([lesson, count]) => ({ lesson, missed: count }))
    .sort((a, b) => b.missed - a.missed);
}
