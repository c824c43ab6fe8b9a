// What the "carry on" button says, from what this device remembers. No screen here, so that Node
// tests it.
import { language } from '../../language/current.ts';
import type { Progress } from '../../storage/progress.ts';
import { words } from './words.en.ts';

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

// Put together with the base, which alone is rewritten where the site stands elsewhere: src/build/elsewhere.ts.
const lessonAt = (id: string): string => `${language.base}lessons/${id}/`;

/** `lessons` in the order of the course, those that are written. */
export function carryOn(lessons: readonly CourseLesson[], { done, last }: Progress): Offer | null {
  const isDone = ({ id }: CourseLesson): boolean => done.includes(id);
  const was = lessons.find(({ id }) => id === last?.lesson);
  if (was !== undefined && !isDone(was)) {
    const section = last?.section ?? null;
    return {
      href: lessonAt(was.id) + (section === null ? '' : `#${encodeURIComponent(section.id)}`),
      button: words.carryOn(String(was.order)),
      about: section === null ? was.title : words.wasAt(was.title, section.title),
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
      href: lessonAt(first.id),
      button: words.again(String(first.order)),
      about: words.allDone(String(lessons.length), first.title),
    };
  }
  return {
    href: lessonAt(next.id),
    button: (done.length === 0 ? words.start : words.goOn)(String(next.order)),
    about: words.takes(next.title, String(next.minutes)),
  };
}
