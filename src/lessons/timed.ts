import type { Lesson } from './lesson-schema.ts';
import { lessonTimes, minutesOf, parted, type LessonTimes } from './lesson-times.ts';
import { objectivesOf } from './objectives.ts';
import { askedAtOnce } from './question-bank.ts';

export type TimedLesson = Omit<Lesson, 'minutes'> & {
  readonly times: LessonTimes;
  /** How many questions a round of it asks: on the main path, and more. None where they are not in this language. */
  readonly asked: ReturnType<typeof parted>;
  readonly minutes: number;
};

interface Entry {
  readonly data: Lesson;
  /** Without the front matter; Astro leaves it out of an entry that has no text. */
  readonly body?: string | undefined;
}

/** A lesson with how long it takes. */
export function timed({ data, body = '' }: Entry): TimedLesson {
  const objectives = objectivesOf(data.id).map(({ text }) => text);
  const asked = askedAtOnce(data.id);
  const times = lessonTimes({ body, hook: data.hook, objectives, asked });
  return { ...data, times, asked: parted(asked), minutes: minutesOf(times) };
}
