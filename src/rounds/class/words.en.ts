import { languages } from '../../language/languages.ts';
import { plural } from '../../quantity/lists.ts';

const { locale } = languages.en;
const answers = (count: string): string =>
  plural(Number(count), { one: '1 answer', other: `${count} answers` }, locale);

export const words = {
  page: {
    title: 'The class',
    description:
      'For whoever teaches: take in the files your learners saved, and see who is strong where, which questions the class missed, and what to talk about at the next meeting. Nothing is stored.',
    lead: 'Your learners save a file on their own devices and hand it to you. Here you see who is strong where, and what the next meeting should be about.',
    noScript: 'This page needs a script, because it reads the files in your own browser.',
    how: 'Where your learners find the file: on their phone, under Practice, “Keep and move”. It carries a name only if they typed one.',
    private:
      'Nothing is stored and nothing is sent. Close this page and it is gone; take the files in again when you need it.',
  },
  choose: 'Choose the files of your learners, as many as you have',
  unnamed: (p: { number: string }) => `Learner ${p.number}`,
  noReader:
    'The part of this page that reads files could not be loaded. Check that you are connected, reload the page, and choose the files once more.',
  refused: (p: { file: string; sentence: string }) => `${p.file}: ${p.sentence}`,
  empty: (p: { file: string }) =>
    `${p.file}: this file holds no answer to a question yet, so there is nothing to show for it.`,
  same: (p: { file: string; name: string }) =>
    `${p.file}: its answers are all in the file of ${p.name} as well, so it counts once.`,
  fuller: (p: { file: string; name: string }) =>
    `${p.file}: it holds all that was there of ${p.name} and more, so it took that one’s place.`,
  learners: {
    title: 'Who is here',
    none: 'Nobody yet. Choose a file, or several at once.',
    said: (p: { answers: string; saved: string }) => `${answers(p.answers)}, saved ${p.saved}`,
    remove: (p: { name: string }) => `Take ${p.name} off`,
    name: 'Name on this page',
  },
  topics: {
    title: 'For the next meeting',
    about:
      'What two or more got wrong at the first try. What somebody was certain of comes first: nobody asks about what seems sure, and on a car nobody is there to stop it.',
    none: 'There is nothing that two of them got wrong. With more answers there may be.',
    missed: (p: { missed: string; asked: string }) =>
      `${p.missed} of ${p.asked} got it wrong at the first try`,
    certain: (p: { certain: string }) =>
      plural(
        Number(p.certain),
        { one: ', 1 of them certain', other: `, ${p.certain} of them certain` },
        locale,
      ),
    lesson: 'Read it together:',
  },
  areas: {
    title: 'Who is strong where',
    about:
      'Of the questions each was asked, how many are solid today: answered right the last time, not guessed, and not so long ago that one person in ten would have lost them.',
    area: 'Area',
    cell: (p: { solid: string; asked: string }) => `${p.solid} of ${p.asked}`,
    notAsked: 'not asked',
    strong: (p: { area: string; names: string }) => `${p.area}: ask ${p.names}.`,
    strongTitle: 'Who can show it to the others',
    nobody: 'Nobody has enough answers in one area yet.',
  },
  items: {
    title: 'Question by question',
    about:
      'First answers only, with the question that most got wrong at the top. “Knows the rest” tells whether those who got the rest right got this one right too. From 0.2 up a question does its work; near 0 or below, read the question before you blame the class. Shares and “Knows the rest” need thirty answers.',
    question: 'Question',
    right: 'Right',
    share: 'Right in 100',
    rest: 'Knows the rest',
    drew: 'Drew most wrong answers',
    of: (p: { right: string; asked: string }) => `${p.right} of ${p.asked}`,
    certain: (p: { count: string }) => `${p.count} certain and wrong`,
    rule: (p: { mistake: string }) => `a number you get if you ${p.mistake}`,
    few: 'too few to say',
    alike: 'all alike',
    coming: 'Loading the question',
    gone: 'A question that this version of the site no longer has',
    more: (p: { count: string }) => `Show all ${p.count} questions`,
  },
  print: 'Print this page',
};
