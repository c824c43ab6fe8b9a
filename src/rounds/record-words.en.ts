import { languages } from '../language/languages.ts';
import { plural } from '../quantity/lists.ts';

const { locale } = languages.en;

export const words = {
  page: {
    title: 'My record',
    description:
      'What is solid and what is shaky, lesson by lesson, how sure you were beside how right you were, and day by day. It stays on this device.',
    lead: 'What your answers say so far. They stay on this device, and nothing is sent.',
    noScript:
      'This page needs a script, because your answers lie in this browser and nowhere else.',
    toKeep: 'Save all of it to a file, move it to another phone, or delete it',
  },
  reading: 'Looking through your answers.',
  none: 'There are no answers yet. Each question that you answer in a lesson or in a round is counted here.',
  toToday: 'Go to today’s round',
  summary: (p: { answers: string; questions: string; all: string }) =>
    `${plural(Number(p.answers), { one: '1 answer', other: `${p.answers} answers` }, locale)} so far, to ${p.questions} of ${p.all} questions.`,
  next: {
    title: 'Read these next',
    shaky: (p: { count: string }) =>
      plural(
        Number(p.count),
        { one: '1\u00A0shaky question', other: `${p.count}\u00A0shaky questions` },
        locale,
      ),
    nothing: 'Nothing that you have been asked is shaky today.',
  },
  lessons: {
    title: 'Lesson by lesson',
    about:
      'A question is solid if your last answer was right and not a guess, and nine people in ten would still know it after this much time. That is worked out by a published schedule; only your next answer can prove it.',
    lesson: 'Lesson',
    asked: 'Asked',
    of: (p: { asked: string; all: string }) => `${p.asked} of ${p.all}`,
    solid: 'Solid',
    shaky: 'Shaky',
    notYet: (p: { count: string }) =>
      plural(
        Number(p.count),
        { one: '1 lesson not asked yet', other: '# lessons not asked yet' },
        locale,
      ),
  },
  sure: {
    title: 'How sure, how right',
    about:
      'The marks pay best if you say “fairly sure” when you are right two times in three or more, and “certain” when it is four times in five.',
    said: 'You said',
    times: 'Times',
    right: 'Right',
    share: 'Right in 100',
    howSure: { 1: 'Guessing', 2: 'Fairly sure', 3: 'Certain' },
    few: 'too few to say',
    over: 'You are right less often than “certain” should mean. On a car nobody stops you, so look again before you say it.',
    under:
      'Your guesses are right more often than not. You know more than you trust yourself with.',
  },
  history: {
    title: 'Day by day',
    day: 'Day',
    answers: 'Answers',
    right: 'Right',
  },
  print: 'Print this record',
};
