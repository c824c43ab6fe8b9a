/** A book of two lessons, made of the built site as the whole one is, and looked into with other tools than made it. */
import { readFileSync, writeFileSync } from 'node:fs';
import { PDFDocument } from 'pdf-lib';
import { makeBook } from '../../src/book/make.ts';
import { dist } from '../../src/build/pages.ts';
import { expect, test } from '../e2e/fixtures.ts';
import { bookmarksIn } from './outline.ts';
import { pagesOf, wordsOn } from './pdf-text.ts';

interface Sent {
  readonly questions: readonly {
    readonly kind: string;
    readonly stem: readonly unknown[];
    readonly options?: readonly { readonly correct: boolean; readonly words: readonly unknown[] }[];
  }[];
}

const flat = (text: string): string => text.replace(/\s+/gu, ' ').trim();
/** 2 and 5: a chart that asks, a drawing, a short case, a pair of lists. */
const LESSONS = [2, 5];
const TITLES = ['2. Hot fluid, thin fluid', '5. Pump, regulator and hot idle'];

test('a short book: contents, bookmarks and heads are true, the key is right, and nothing leaves the sheet', async () => {
  test.setTimeout(300_000);
  const made = { version: '1.2.3', date: new Date('2030-01-01T00:00:00Z') };
  const options = { paper: 'a4', units: 'si', lessons: LESSONS, out: '' } as const;
  const { bytes } = await makeBook(dist, options, made);
  const file = test.info().outputPath('book.pdf');
  writeFileSync(file, bytes);
  const pdf = await PDFDocument.load(bytes, { updateMetadata: false });
  const pages = pagesOf(file);
  const on = (page: number) => flat(pages[page - 1] ?? '');

  expect(pages[0]).toContain('Version 1.2.3, January 1, 2030');
  expect(pages[0]).toContain('Metric units');
  expect(pdf.getCreationDate()?.toISOString()).toBe('2030-01-01T00:00:00.000Z');
  // ISO 216: 210 by 297 mm, in points of 1/72 inch.
  expect(pdf.getPage(0).getWidth()).toBeCloseTo(595.3, 0);
  expect(pdf.getPage(0).getHeight()).toBeCloseTo(841.9, 0);

  // Each page but the cover has its number at its foot.
  pages.slice(1).forEach((text, i) => {
    expect(text.trim().split(/\s+/u).at(-1)).toBe(String(i + 2));
  });

  // Every line of the contents is true: the heading stands on that page, and a bookmark leads there.
  const bookmarks = bookmarksIn(pdf);
  const contents = pages
    .filter((text) => /^\s*Contents\b/u.test(text))
    .flatMap((text) => [...text.matchAll(/^\s*(\S.*?)\s{2,}(\d+)$/gmu)])
    .map(([, title = '', page]) => ({ title: flat(title), page: Number(page) }));
  expect(contents.length).toBeGreaterThan(30);
  for (const title of [
    ...TITLES,
    'Key to the questions',
    'Glossary',
    'How the model works',
    'Sources',
  ]) {
    expect(contents.map((line) => line.title)).toContain(title);
  }
  for (const { title, page } of contents) {
    expect(on(page), `"${title}" on page ${page}`).toContain(title);
    expect(bookmarks).toContainEqual({ title, page });
  }
  expect(contents.map(({ page }) => page)).toEqual(
    contents.map(({ page }) => page).toSorted((a, b) => a - b),
  );

  // The title of the chapter runs at the head of each of its pages.
  const [first = 0, second = 0] = TITLES.map(
    (title) => contents.find((line) => line.title === title)?.page,
  );
  for (let page = first; page < second; page += 1) {
    expect(on(page).startsWith(TITLES[0] ?? '')).toBe(true);
  }

  // A table that goes on over the foot of a page has all the rows that it says it has.
  const tables = [
    ...pages.join('\n').matchAll(/\((\d+) of \d+\s+points\)([^]*?)A simulation, printed/gu),
  ];
  expect(tables.length).toBe(LESSONS.length);
  for (const [, said, text = ''] of tables) {
    const rows = text
      .split('\n')
      .filter((line) => /^\s*[−-]?\d[\d.,]*(?:\s+[−-]?\d[\d.,]*)+\s*$/u.test(line));
    expect(rows.length).toBe(Number(said));
  }

  // One unit system, and no address of the machine that made it.
  const whole = pages.slice(0, contents.find(({ title }) => title === 'Glossary')?.page).join('\n');
  expect(whole).not.toMatch(/\d (?:psi|°F)\b/u);
  expect(whole).not.toContain('127.0.0.1');
  expect(whole).toContain('Before the run');

  // What the site sends to be graded by says which option is right; its number is the one beside the same words in the lesson.
  const key = flat(
    pages
      .slice((contents.find(({ title }) => title === 'Key to the questions')?.page ?? 0) - 1)
      .join('\n'),
  );
  const lesson = flat(pages.slice(second - 1).join('\n'));
  const sent = JSON.parse(
    readFileSync(`${dist}/questions/pump-and-regulator.json`, 'utf8'),
  ) as Sent;
  let looked = 0;
  for (const { stem, options: choices = [] } of sent.questions.filter(
    ({ kind }) => kind === 'single',
  )) {
    // The same words may stand in the text of the lesson.
    const [begins] = stem;
    const asked = typeof begins === 'string' ? lesson.indexOf(flat(begins)) : -1;
    if (asked < 0) continue;
    for (const { correct, words } of choices) {
      const [text] = words;
      if (words.length !== 1 || typeof text !== 'string' || text.length > 60) continue;
      const number = lesson.charAt(lesson.indexOf(`. ${text}`, asked) - 1);
      if (!/[1-6]/u.test(number)) continue;
      expect(key.includes(`${number}. ${text}`), text).toBe(correct);
      looked += 1;
    }
  }
  expect(looked).toBeGreaterThan(15);

  const { sheets, words } = wordsOn(file);
  // 18 mm at the sides are 51 points; a label of a picture may reach out by a letter.
  const out = words.filter(
    ({ page, left, right, top, bottom }) =>
      left < 48 ||
      right > (sheets[page - 1]?.width ?? 0) - 48 ||
      top < 24 ||
      bottom > (sheets[page - 1]?.height ?? 0) - 24,
  );
  expect(out).toEqual([]);
});
