import { languages } from '../language/languages.ts';
import { plural } from '../quantity/lists.ts';

const { locale } = languages.en;
const questions = (count: string, one = 'question', other = 'questions'): string =>
  plural(Number(count), { one: `1 ${one}`, other: `${count} ${other}` }, locale);

export const words = {
  page: {
    title: 'Today',
    description:
      'The questions that are due today, from every lesson you have done: five minutes, how sure you are, and every answer explained. With a date for your exam.',
    lead: 'A few questions a day stick better than an evening of reading. They come back just before you would forget them.',
    noScript:
      'This page needs a script to know what is due. Without one, each lesson has its questions at its end.',
    toLessons: 'Go to the course',
    toRecord: 'My record: what is solid, and what is shaky',
    private: 'Your answers stay on this device. Nothing is sent.',
    toKeep: 'Save them, or move them to another phone',
  },
  reading: 'Looking up what is due.',
  head: { ready: 'Your round', paused: 'Your round waits', over: 'How it went' },
  waits: (p: { due: string; fresh: string }) =>
    `${questions(p.due, 'question comes back', 'questions come back')}, ${p.fresh} new.`,
  onlyDue: (p: { due: string }) =>
    `${questions(p.due, 'question comes back', 'questions come back')}.`,
  onlyFresh: (p: { fresh: string }) => `${questions(p.fresh, 'new question', 'new questions')}.`,
  more: (p: { more: string }) =>
    `After that ${questions(p.more, 'more is waiting', 'more are waiting')}, for another round or another day.`,
  lasts: (p: { minutes: string }) =>
    plural(
      Number(p.minutes),
      { one: 'About 1 minute.', other: `About ${p.minutes} minutes.` },
      locale,
    ),
  begin: 'Begin',
  goOn: (p: { place: string; of: string }) => `Go on with question ${p.place} of ${p.of}`,
  drop: 'Leave the rest of this round',
  another: 'Another round',
  leave: 'Stop here for now',
  loading: 'Loading the questions',
  asking: (p: { place: string; of: string }) => `Question ${p.place} of ${p.of}`,
  answered: (p: { place: string; of: string }) => `Question ${p.place} of ${p.of}, answered`,
  nothing: {
    later: (p: { when: string }) => `Nothing is due today. The next question comes back ${p.when}.`,
    tomorrow: 'tomorrow',
    inDays: (p: { days: string }) => `in ${p.days} days`,
    never: 'Nothing is due and nothing is new. Do a lesson, and its questions join in.',
    done: 'You have answered all there was for today.',
    beforeExam: 'All that was planned before your exam has been asked.',
  },
  beginners:
    'You have not marked a lesson as done yet, so the round begins with the first lesson. Each lesson that you finish adds its questions.',
  minutes: {
    label: 'How long may a round take?',
    of: (p: { minutes: string; questions: string }) =>
      `${p.minutes} minutes, ${p.questions} questions`,
  },
  car: {
    title: 'Car of the day',
    about: (p: { number: string; kind: string }) =>
      `Number ${p.number}, ${p.kind}. Everybody gets the same one today, so you can compare notes over coffee.`,
    kinds: { 1: 'a plain one', 2: 'with any fault or none', 3: 'perhaps with two faults' },
    go: 'Bring it in',
  },
  tooShort:
    'Rounds this short will not get through them. Choose longer ones, or do more than one a day.',
  exam: {
    label: 'Date of your exam',
    hint: 'With a date all lessons are planned: nothing comes after it, the gaps shorten toward it, and what is shaky comes back in the last three days.',
    set: 'Set the date',
    clear: 'No date',
    noDate: 'That is not a date. Choose a day, or type year, month and day.',
    tooSoon: 'That day is here already, or past. The plan needs a day from tomorrow on.',
    tooFar: 'That is more than two years away. Choose a day within two years.',
    ahead: (p: { days: string; fresh: string; each: string }) =>
      `${plural(Number(p.days), { one: 'Tomorrow is your exam', other: `${p.days} days to your exam` }, locale)}. ${questions(p.fresh, 'question has', 'questions have')} not been asked yet: ${p.each} a day gets through them.`,
    aheadAll: (p: { days: string }) =>
      `${plural(Number(p.days), { one: 'Tomorrow is your exam', other: `${p.days} days to your exam` }, locale)}. Every question has been asked at least once.`,
    over: 'The day of your exam has come, and nothing more is planned. Set another date, or choose “No date” to go on without one.',
    kept: 'The date could not be kept: this browser keeps nothing for this site. It counts until you close the page.',
  },
  miss: {
    offline: 'The questions could not be loaded. Check that you are connected, then try again.',
    refused:
      'The site did not hand out its questions. It may have changed since you opened this page: reload it.',
    stuck:
      'The part that asks the questions could not be loaded. Reload the page; your round waits.',
    foreign:
      'Something other than the questions arrived. If your network asks you to log in, do that first, then try again.',
  },
  again: 'Try again',
  reload: 'Reload the page',
  store: {
    full: 'This browser has no room left, so earlier answers could not be read. You can answer, but nothing comes back by itself.',
    blocked:
      'This browser keeps nothing for this site. You can answer, but nothing comes back by itself.',
    newer: 'A newer version of this site has been here. Reload the page to see what is due.',
    busy: 'Another tab of this site holds your answers. Close it, then reload this page.',
    failed:
      'This browser reported a fault in what it stores, so earlier answers could not be read.',
  },
  damaged: (p: { count: string }) =>
    `${plural(Number(p.count), { one: '1 earlier answer', other: `${p.count} earlier answers` }, locale)} could not be read. They are left as they lie, and the plan goes by the others.`,
  clock:
    'This device’s clock was set back at some time. The plan goes by the latest day it has seen.',
};
