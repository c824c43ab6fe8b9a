/**
 * What each theory lesson enables a reader to do. The lessons show these texts, the questions name these ids, and the
 * coverage lint counts items against them; so they stand once in each language, as data.
 */
import type { Objective } from './objective.ts';
import { objectives } from './objectives.en.ts';

export { objectives };
export type { Objective };

export function objectivesOf(lesson: string): readonly Objective[] {
  return objectives.filter((o) => o.lesson === lesson);
}
