import type { Page } from '@playwright/test';
import { languageAt, languages, source } from '../../src/language/languages.ts';
import { twinsOf } from '../../src/language/pages.ts';
import { expect } from './fixtures.ts';

/** What has the focus, and whether one can see that. */
export const focused = (page: Page) =>
  page.evaluate(() => {
    const element = document.activeElement;
    if (element === null || element === document.body) return null;
    // The switch of units draws the ring round its label, since the input itself is see-through.
    const ringed = [element, element.closest('label')].some((candidate) => {
      if (candidate === null) return false;
      const { outlineStyle, outlineWidth } = getComputedStyle(candidate);
      return outlineStyle !== 'none' && parseFloat(outlineWidth) >= 2;
    });
    const { width, height } = element.getBoundingClientRect();
    return {
      name: element.textContent.trim() || element.getAttribute('name') || element.tagName,
      ringed,
      seen: width > 0 && height > 0,
    };
  });

/** A lesson has its link to another language in the rail. */
const twinsIn = (address: string) => (address.includes('/lessons/') ? [] : twinsOf(address));

/** What the header of an English page holds after the skip link, in order. */
const inEnglish = (address: string) => {
  // The search page has the form in its own text; there the header has a link in its place.
  const searching = address === '/search/';
  const twins = twinsIn(address).filter(({ language }) => language.id !== source);
  return [
    'Slips When Hot',
    'units',
    expect.stringContaining('page'),
    'Course',
    'Whole car',
    'Practice',
    'Measure',
    ...(searching ? ['Search'] : []),
    'How the model works',
    'Glossary',
    'Sources',
    ...twins.map(({ language }) => language.twin),
    ...(searching ? [] : ['q', 'Search']),
  ];
};
/** And of a translation, whose own words are not the business of this test: the twin comes last. */
const translated = (address: string) => [
  ...Array<unknown>(4).fill(expect.any(String)),
  ...(twinsIn(address).length > 0 ? [languages[source].twin] : []),
];

/** The tab key walks the header of a page that has just been opened, and the focus can be seen. */
export async function walkHeader(page: Page, address: string): Promise<void> {
  const walked: string[] = [];
  const expected = languageAt(address).id === source ? inEnglish(address) : translated(address);
  for (let step = 0; step < expected.length + 1; step += 1) {
    await page.keyboard.press('Tab');
    const now = await focused(page);
    expect(now, `after ${walked.join(', ')}`).not.toBeNull();
    expect(now?.ringed, `${now?.name} shows its focus`).toBe(true);
    expect(now?.seen, `${now?.name} can be seen`).toBe(true);
    walked.push(now?.name ?? '');
  }
  expect(walked.slice(1)).toEqual(expected);
}
