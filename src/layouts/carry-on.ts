// What the "carry on" button says, from what this device remembers. No screen here, so that Node
// tests it.
import type { Progress } from '../storage/progress.ts';

export interface CourseLesson {
  readonly id: string;
  readonly title: string;
  readonly order: number;
  readonly minutes: number;
}
export interface Offer {
  readonly href: string;
  readonly button: string;
  readonly about: string;
}

const address = (id: string): string => `/lessons/${id}/`;

/** `lessons` in the order of the course, those that are written. */
export function carryOn(lessons: readonly CourseLesson[], { done, last }: Progress): Offer | null {
  const isDone = ({ id }: CourseLesson): boolean => done.includes(id);
  const was = lessons.find(({ id }) => id === last?.lesson);
  if (was !== undefined && !isDone(was)) {
    const section = last?.section ?? null;
    return {
      href: address(was.id) + (section === null ? '' : `#${encodeURIComponent(section.id)}`),
      button: `Carry on with lesson ${was.order}`,
      about: section === null ? was.title : `${was.title}. You were at “${section.title}”.`,
    };
  }
  // Done with the last one: the next that is not, going round, because people skip about.
  const from = was === undefined ? 0 : lessons.indexOf(was) + 1;
  const next = [...lessons.slice(from), ...lessons.slice(0, from)].find(
    (lesson) => !isDone(lesson),
  );
  if (next === undefined) {
    const [first] = lessons;
    if (first === undefined) return null;
    return {
      href: address(first.id),
      button: `Read lesson ${first.order} again`,
      about: `You marked all ${lessons.length} lessons done. ${first.title} is the first.`,
    };
  }
  return {
    href: address(next.id),
    button: `${done.length === 0 ? 'Start' : 'Go on'} with lesson ${next.order}`,
    about: `${next.title}. ${next.minutes} minutes.`,
  };
}
