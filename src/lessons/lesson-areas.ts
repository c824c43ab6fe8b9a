/** Lessons by area, for whoever picks some of them. Areas stand in the order of the work: why, then the car, then the bench. */
import { course, type PlannedLesson } from './course.ts';

const areaOf: Readonly<Record<string, Area>> = {
  'what-pressure-does': 'fluid',
  'hot-fluid-thin-fluid': 'fluid',
  'thin-gap-open-hole': 'fluid',
  'holds-cold-slips-hot': 'circuits',
  'pump-and-regulator': 'circuits',
  'regulator-to-clutch': 'circuits',
  'cold-hot-and-air': 'circuits',
  'two-range-selections': 'selection',
  'turbine-must-stop': 'log',
  'how-hard-the-converter-pushes': 'log',
  'what-slip-is': 'log',
  'live-data': 'log',
  'codes-are-questions': 'log',
  'warm-to-the-complaint': 'complaint',
  'the-complaint': 'complaint',
  'outside-first': 'complaint',
  'other-complaints': 'complaint',
  'pressures-hot-and-cold': 'tests',
  'the-next-best-test': 'tests',
  'air-on-the-bench': 'tests',
  'parts-that-seal': 'parts',
  'do-it-together': 'parts',
  'whose-parts': 'parts',
  'putting-back': 'parts',
  'proving-the-repair': 'proof',
};

export const areas = [
  'fluid',
  'circuits',
  'selection',
  'complaint',
  'log',
  'tests',
  'parts',
  'proof',
] as const;
export type Area = (typeof areas)[number];

export interface LessonArea {
  readonly area: Area;
  readonly lessons: readonly PlannedLesson[];
}

/** @throws Error if a lesson has no area */
export function lessonsByArea(lessons: readonly PlannedLesson[] = course): readonly LessonArea[] {
  const lost = lessons.find(({ id }) => areaOf[id] === undefined);
  if (lost !== undefined)
    throw new Error(
      `The lesson "${lost.id}" has no area: give it one in src/lessons/lesson-areas.ts.`,
    );
  return areas.map((area) => ({ area, lessons: lessons.filter(({ id }) => areaOf[id] === area) }));
}
