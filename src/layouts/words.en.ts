export const words = {
  /** What the trade writes on the work order. */
  siteName: 'Slips When Hot',
  skip: 'Skip to the page',
  places: {
    course: 'Course',
    wholeCar: 'Whole car',
    practise: 'Practice',
    measure: 'Measure',
    model: 'How the model works',
    glossary: 'Glossary',
    sources: 'Sources',
  },
  header: {
    onScreen: 'On screen:',
    units: 'Units',
    usUnits: 'US units:',
    metricUnits: 'Metric units:',
    dark: 'Dark',
    light: 'Light',
    /** After either, for the ear. */
    page: 'page',
    main: 'Main',
    search: 'Search',
    searchSite: 'Search the site',
  },
  footer: {
    safetyTitle: 'Before you work',
    safety:
      'Hot fluid burns, pressure and air injure, and a vehicle can roll, in gear, in Neutral and in Park. One that is raised can fall. Follow the vehicle maker’s service information and your local codes. Nothing here replaces them, or a licensed trade.',
    inventedTitle: 'The training transmission is invented',
    invented:
      'It is no maker’s transmission. Its numbers are chosen for teaching. [See all of them, with every equation.](model) What the site claims was measured: [how we know.](proof)',
    about:
      'Free, and open source under the MIT license. It asks for no account and sends nothing about you anywhere. What it remembers stays on this device. Its typeface and some of its software are the work of others: [their licenses.](licences)',
    shop: 'For the shop: [meetings for a projector,](meetings) with votes and notes.',
    offline: 'It works where there is no signal, too: [use it without internet.](offline)',
  },
  coursePath: {
    /** A name for the picture, for the ear: "Why it happens: lesson 3 after 1 and 2, 4 after 3." */
    name: (part: string, lessons: string) => `${part}: lesson ${lessons}.`,
    after: (lesson: string, needs: string) => `${lesson} after ${needs}`,
    lines: 'Each lesson comes after those whose lines lead into it.',
    dashed: 'Dashed: not written yet.',
    filled: 'Filled: you marked it as done.',
  },
  /** Behind the sign of each mark, once on a page. */
  marks: {
    source: '[A source](sources) says so. Press the mark to see which, and how well we know it.',
    none: '[Common practice in the trade](none), and no source for it.',
  },
  lesson: {
    place: (order: string) => `Lesson ${order}`,
    minutes: (minutes: string) => `${minutes} minutes`,
    times: (p: { read: string; simulate: string; questions: string; asked: number }): string =>
      p.asked === 0
        ? `${p.read} to read, ${p.simulate} to try it`
        : `${p.read} to read, ${p.simulate} to try it, ${p.questions} for ${p.asked} questions`,
    /** Of the same round, and not in those minutes. */
    more: (p: { minutes: string; asked: number }) =>
      `plus ${p.minutes === '1' ? '1 minute' : `${p.minutes} minutes`} for ${p.asked === 1 ? '1 more question' : `${p.asked} more questions`}`,
    after: 'Comes after:',
    notWritten: (title: string) => `${title} (not written yet)`,
    /** What only a translation has cause to say. */
    inEnglish: (title: string) => title,
    objectives: 'What you will be able to do',
    ends: 'Where next',
    mark: 'Mark as done',
    marked: 'Marked as done',
    unmark: 'Undo',
    notMarked: {
      full: 'This browser has no room left to remember it.',
      blocked: 'This browser keeps nothing for this site, so it cannot be remembered.',
      newer: 'A newer version of this site wrote your progress. Reload the page, then try again.',
    },
    /** At a place that has moved; a link with the title of the lesson that has it now comes after it. */
    moved: 'What this link leads to stands elsewhere now:',
    movedWhole: {
      title: 'This lesson has moved',
      description: 'A lesson that has another address now. The page leads on to it.',
      lead: 'What stood at this address stands elsewhere now:',
    },
    /** Before the address of the page, on paper. */
    next: (title: string) => `Next: ${title}`,
    nextInEnglish: (title: string) => `Next: ${title}`,
    back: 'Back to the course',
  },
};
