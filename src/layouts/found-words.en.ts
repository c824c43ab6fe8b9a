/**
 * What the search page says of what it found. English alone: a translation has no search so far. Lists and plurals
 * are made here, because `src/quantity` would bring 17 kB of simulations to a page of 6.
 */
const locale = 'en-US';
const and = new Intl.ListFormat(locale);
const or = new Intl.ListFormat(locale, { type: 'disjunction' });
const several = (count: number, one: string, many: string): string =>
  `${count} ${count === 1 ? one : many}`;
const quoted = (word: string): string => `“${word}”`;

export const words = {
  locale,
  pageTitle: (typed: string) =>
    typed === '' ? 'Search · Slips When Hot' : `${typed}: search · Slips When Hot`,
  searching: 'Searching.',
  kinds: { lesson: 'Lessons', glossary: 'Glossary', other: 'Sources and the model' },
  counted: {
    lesson: (count: number) => several(count, 'lesson', 'lessons'),
    glossary: (count: number) => several(count, 'glossary entry', 'glossary entries'),
    other: (count: number) => several(count, 'other place', 'other places'),
  },
  either: (searched: readonly string[]) => or.format(searched.map(quoted)),
  found: (p: { either: string; places: readonly string[] }) =>
    `${p.either} is in ${and.format(p.places)}.`,
  noneHas: (missing: readonly string[]) => `No page has ${or.format(missing.map(quoted))}.`,
  notTogether: (typed: string) => `Nothing has all of ${quoted(typed)}.`,
  nothing: (typed: string) => `Nothing found for ${quoted(typed)}.`,
  /** A list of links stands in the place of the link. */
  close: 'Close: [words](list).',
  didYouMean: 'Did you mean [words](list)?',
  single: 'One word at a time: [words](list).',
  tryPlain: 'Check the spelling, or try one plain word: “seal”, “slips”, “pump”.',
  listed:
    'Everything is listed on [the course page](course) and in [the glossary](glossary), which also gives what else the trade calls a thing.',
  shownIn: {
    us: 'The page shows US units, and numbers are searched as shown. Press kPa at the top to search metric ones.',
    si: 'The page shows metric units, and numbers are searched as shown. Press psi at the top to search US ones.',
  },
  moreSections: (count: number) => `And in ${several(count, 'more section', 'more sections')}.`,
  showAll: (count: number) => `Show all ${count}`,
  restNotLoaded: 'The rest did not load. Try again',
  notLoaded: 'The search did not load.',
  offline: 'You may be offline, or the site may be half way through an update.',
  again: 'Try again',
};
