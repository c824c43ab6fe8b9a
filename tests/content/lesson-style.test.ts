// How the words sound: sentence lengths of each lesson, and words that the trade does not say, over all built pages.
import { globSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { builtPages } from '../../src/build/pages.ts';
import { lessons } from './lesson-prose.ts';
import { bannedIn, CLIPPED, MEAN, styleOf } from './lesson-style.ts';

/** Lessons with more clipped sentences than the bar, with their share [%]. A figure here only falls, and at the bar its line goes. */
const STILL_CLIPPED: Readonly<Record<string, number>> = {};

/** Where such words still stand, and which. A list here only gets shorter. */
const STILL_SAID: Readonly<Record<string, readonly string[]>> = {};

/** To a tenth, as the list gives it. */
const told = (share: number): number => Math.round(share * 10) / 10;

test.each(lessons)(`$id: ${MEAN[0]} to ${MEAN[1]} words to a sentence, few clipped`, (lesson) => {
  const { mean, clipped } = styleOf(lesson.body, lesson.head.hook);
  expect(mean).toBeGreaterThanOrEqual(MEAN[0]);
  expect(mean).toBeLessThanOrEqual(MEAN[1]);
  expect(told(clipped)).toBeLessThanOrEqual(STILL_CLIPPED[lesson.id] ?? CLIPPED);
});

test('the list names lessons that are clipped, by what they are', () => {
  for (const [id, share] of Object.entries(STILL_CLIPPED)) {
    const lesson = lessons.find((one) => one.id === id);
    if (lesson === undefined) throw new Error(`There is no lesson "${id}": take its line out.`);
    const { clipped } = styleOf(lesson.body, lesson.head.hook);
    expect(told(clipped), `${id} reads better now: write that, or take its line out`).toBe(share);
    expect(share, id).toBeGreaterThan(CLIPPED);
  }
});

const wordsOf = (html: string): string =>
  html
    .replace(/<(script|style)\b[^]*?<\/\1>/g, ' ')
    .replace(/<[^>]+>/g, ' ')
    .replaceAll('&#39;', '’')
    .replace(/\s+/g, ' ');

test('no page and no simulation says what the trade does not', () => {
  const pages = builtPages()
    .filter(({ address }) => !address.startsWith('/es/'))
    .map(({ address, html }) => [address, wordsOf(html)] as const);
  const simulations = globSync(
    'src/{simulation,widgets,planner,own-sheet,measure}/**/*words.en.ts',
  ).map((file) => [file.replaceAll('\\', '/'), readFileSync(file, 'utf8')] as const);
  expect(pages.length).toBeGreaterThan(10);
  expect(simulations.length).toBeGreaterThan(10);
  const said = [...pages, ...simulations].flatMap(([where, text]) => {
    const found = bannedIn(text);
    return found.length === 0 ? [] : [[where, found.map(({ words }) => words)] as const];
  });
  expect(Object.fromEntries(said)).toEqual(STILL_SAID);
});

test.each([
  ['The leak drinks the flow.', 'drinks'],
  ['It would trip at once.', 'trip'],
  ['A sound car holds.', 'sound car'],
  ['A drip from the kitchen tap.', 'kitchen tap'],
])('%s', (text, words) => {
  expect(bannedIn(text).map((one) => one.words)).toEqual([words]);
});

test.each([
  'A road trip warms it.',
  'It may trip you up.',
  'A pressure tap in the case.',
  'The sound of the pump.',
])('%s is said', (text) => {
  expect(bannedIn(text)).toEqual([]);
});

test('sentences are counted as a reader would', () => {
  // Ten words, three, and nine; a table, a heading and a formula are none.
  const body = `<Section title="A title">

The pump turns with the engine and moves fluid always. It never stops.

| a | b |
| --- | --- |

$$
x
$$

At <Num id="a" /> it moves <Num id="b" />, and not <Term id="c">a drop</Term>.

</Section>

<Tasks>

Go. Now.`;
  const { mean, clipped } = styleOf(body, '');
  expect(mean).toBeCloseTo((10 + 3 + 9) / 3, 9);
  expect(clipped).toBeCloseTo(100 / 3, 9);
});
