/** Lessons by area, for whoever picks some of them. A lesson stands where most of its objectives do; of two areas, in the first. */
import { areas, type Area } from '../quiz/rehearsal/blueprint.ts';
import { course, type PlannedLesson } from './course.ts';
import { objectives } from './objectives.en.ts';
import { areaOf } from './rehearsal-areas.ts';

export interface LessonArea {
  readonly area: Area;
  readonly lessons: readonly PlannedLesson[];
}

function areaOfLesson({ id }: PlannedLesson): Area | undefined {
  const its = objectives.filter(({ lesson }) => lesson === id).map((one) => areaOf[one.id]);
  const countIn = (area: Area): number => its.filter((one) => one === area).length;
  return its.toSorted(
    (one, other) => countIn(other) - countIn(one) || areas.indexOf(one) - areas.indexOf(other),
  )[0];
}

/** @throws Error if a lesson has no area */
export function lessonsByArea(lessons: readonly PlannedLesson[] = course): readonly LessonArea[] {
  const placed = lessons.map((lesson) => ({ lesson, area: areaOfLesson(lesson) }));
  const lost = placed.find(({ area }) => area === undefined);
  if (lost !== undefined)
    throw new Error(
      `The lesson "${lost.lesson.id}" has no area: its objectives are missing in src/lessons/objectives.en.ts.`,
    );
  return areas.map((area) => ({
    area,
    lessons: placed.filter((one) => one.area === area).map(({ lesson }) => lesson),
  }));
}
