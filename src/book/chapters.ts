import { course } from '../lessons/course.ts';

export interface Chapter {
  /** What the places of the chapter begin with. */
  readonly id: string;
  readonly address: string;
  /** Of a lesson. */
  readonly number?: number;
}

export const lessonCount = course.length;

/** The pages of the site that the book holds, in order. */
export function chaptersOf(lessons: readonly number[]): readonly Chapter[] {
  const taught = lessons.flatMap((number) => {
    const id = course[number - 1]?.id;
    return id === undefined ? [] : [{ id, address: `/lessons/${id}/`, number }];
  });
  const rest = ['glossary', 'model', 'sources'].map((id) => ({ id, address: `/${id}/` }));
  return [...taught, ...rest];
}
