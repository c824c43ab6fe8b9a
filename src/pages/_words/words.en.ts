import { languages } from '../../language/languages.ts';
import { listOf, plural } from '../../quantity/lists.ts';

const { locale } = languages.en;

export const words = {
  home: {
    description:
      'Why a clutch that holds cold lets go hot, and how to prove it. A free training site for independent automatic-transmission shops.',
    holds: 'Holds cold.',
    slips: 'Slips hot.',
    findOut: 'Find out why.',
    lead: 'It pulls away fine in the morning. Twenty minutes later it flares, or it will not move. By the time it has cooled on your lift, nothing is wrong. Here you warm the fluid yourself, open a crack by a hair, and watch the clutch lose its hold.',
    learn: 'Learn',
    learnAbout: (lessons: string) =>
      `${lessons} short lessons, from what pressure does to proving the repair. Each takes about a quarter of an hour.`,
    practise: 'Practice',
    practiseAbout:
      'A few questions a day, which come back just before you would forget them. Cars that come in with a complaint, and a rehearsal for your exam.',
    measure: 'Measure',
    measureAbout:
      'You have readings from a real car? Type them in, and see which faults still fit and which test to take next. Job sheets and a reader for scan logs go with it.',
    show: 'Show',
    showAbout:
      'The whole car on one screen, cold beside hot: any of the faults, from selecting Drive to the park pawl. Made for a projector, fine on a phone.',
    lookUp: 'Look up',
    lookUpAbout:
      'What every word means, in the trade’s own terms, with the lesson that explains it.',
    whom: 'Whom it is for',
    whomAbout:
      'You work in an independent transmission shop, or you are learning to. You need to know why a fault shows only hot, which test will prove it, and what to say to the customer. No math beyond a calculator. You can start at the first lesson knowing nothing of hydraulics.',
    notYet: 'What is not here yet',
    notYetAbout:
      'Nobody has measured yet whether this site makes anyone better at the job. That takes a trial with apprentices, and there has been none.',
  },
  /** The home page of a translation, which has a part of the site. */
  translated: {
    lessons: 'What there is in this language',
    lesson: (order: string, minutes: string) => `Lesson ${order}, ${minutes} minutes`,
    glossary: '[The glossary](glossary) has the words of these lessons.',
    rest: 'The rest is in English',
    restAbout: (lessons: string) =>
      `[The course in English](course) has ${lessons} lessons, each with its simulations and its questions. Those that are not in this language yet:`,
    units: 'At the top of each page you choose the units: psi and °F, or kPa and °C.',
  },
  course: {
    title: 'Course',
    description:
      'Short lessons on why a clutch that holds cold slips hot: what pressure does, hot fluid, thin gaps, and how to prove the repair.',
    lead: (p: {
      lessons: string;
      longest: string;
      minutes: string;
      questions: string;
      asked: string;
      more: string;
    }) =>
      `${p.lessons} lessons of ${p.longest} minutes at most, ${p.minutes} minutes in all. That is the text at a calm pace, each simulation once with its tasks, and ${p.questions} questions. Each round goes on to ${p.asked} of them, which takes ${p.more} minutes more over the whole course. What goes deeper is folded, and the written tasks at the end come on top.`,
    why: 'Why it happens',
    how: 'How to find it',
    notWritten: 'Not written yet',
    minutes: (minutes: string) => `${minutes} minutes`,
    after: (lessons: readonly string[]) =>
      `After ${plural(lessons.length, { one: 'lesson', other: 'lessons' }, locale)} ${listOf(lessons, 'conjunction', locale)}`,
    done: 'You marked it as done',
  },
  glossary: {
    title: 'Glossary',
    description:
      'Plain meanings of the transmission and hydraulics words that the lessons use, with what else the trade calls them.',
    lead: 'The words of the lessons, in plain terms, with what else the trade calls them.',
    find: 'Find a term',
    clear: 'Clear',
    aToZ: 'A–Z',
    toLetters: 'up to the letters',
    elsewhere:
      'Check the spelling, or type fewer letters. It may stand in a lesson all the same: [search the whole site for it](search).',
    letters: 'Letters',
    also: 'Also called:',
    see: 'See also:',
    lesson: 'Lesson:',
  },
  sources: {
    title: 'Sources',
    description:
      'Every standard, book and paper that a number or an equation on this site comes from, and how much of it we have read ourselves.',
    lead: 'Where the equations and numbers come from, what we took from each, and how much of it we have read ourselves. A trade fact with no source is marked as common practice where it stands.',
    kinds: {
      standard: 'Standards',
      book: 'Books',
      paper: 'Papers',
      data: 'Data',
      'open code': 'Open code',
      'common practice': 'Common practice',
    },
    used: 'Used for:',
    seen: 'How we know it:',
    marked: 'Marked in:',
    howSure: 'How sure a mark is',
    seenMeans: {
      read: 'we had the text before us.',
      'read in part': 'we had before us the part that is used here, not the whole.',
      'read as quoted by others': 'we know it through books and papers that agree on it.',
      'from memory':
        'no text was at hand. Where there are printed examples, a test holds the result against them.',
    },
    noSource: {
      name: 'common practice, no source',
      meaning:
        'shops work by it, and we have found no text to name. Your maker’s service information goes before it.',
    },
  },
  search: {
    title: 'Search',
    description:
      'Search every lesson, section by section, the glossary, the sources and the page on how the model works.',
    label: 'What are you looking for?',
    button: 'Search',
    how: 'One or two words find most: a part, a fault, a test. The lessons, the glossary, the sources and the model page are searched.',
    withoutScript:
      'Searching needs a script, and this browser runs none here. What is on the site is listed on these pages: [every lesson](course), [every term](glossary), [every source](sources) and [how the model works](model). Your browser can find words on a page.',
  },
  notFound: {
    title: 'No such page',
    description: 'This address leads to no page of this site. The course page lists everything.',
    lead: 'Nothing stands at this address. It may have been mistyped, or moved.',
    ways: '[The course page](course) lists every lesson. [The front page](home) shows the rest.',
  },
};
