/** What is kept of the proofs: every miss has its reason, every reason a miss, and the table says what the file says. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import {
  keptFigures,
  readLeft,
  givenReasons,
  unexplained,
  type Figure,
  type Proof,
} from '../../src/proof/form.ts';
import { commonCommand, inOrder, markdown } from '../../src/proof/table.ts';
import { words } from '../../src/proof/words.en.ts';

const kept = keptFigures();

test('every bar that is missed has a reason, and no reason is left over', () => {
  expect(unexplained(kept, givenReasons())).toEqual([]);
});

test('every proof has a name and a sentence on the page, and is there once', () => {
  const names = kept.map(({ name }) => name);
  expect(new Set(names).size).toBe(names.length);
  expect(Object.keys(words.proofs)).toEqual(expect.arrayContaining(names));
});

test('what was measured is told apart from what else was', () => {
  for (const { name, figures } of kept) {
    const whats = figures.map(({ what }) => what);
    expect(new Set(whats).size, name).toBe(whats.length);
    expect(figures.length, name).toBeGreaterThan(0);
  }
});

test('the table of the repository says what the figures say', () => {
  // It is laid out anew when it is kept.
  const bare = (text: string): string => text.replaceAll(/-{3,}/g, '---').replaceAll(/\s+/g, ' ');
  const table = readFileSync(new URL('../../src/proof/figures.md', import.meta.url), 'utf8');
  expect(bare(table)).toBe(bare(markdown(kept, givenReasons())));
});

const figure = (what: string, met: boolean, command = 'a'): Figure => ({
  what,
  value: 1,
  bar: 2,
  met,
  command,
});
const proof = (name: string, figures: readonly Figure[]): Proof => ({
  name,
  on: '2026-11-29',
  machine: 'a bench',
  figures: [...figures],
});
const because = 'Because the registry of this machine lets nobody ask it.';

test('a miss without a reason and a reason without a miss are named', () => {
  const proofs = [proof('speed', [figure('slow', false), figure('fast', true)])];
  expect(unexplained(proofs, {})).toEqual([
    'speed: slow misses its bar, and src/proof/reasons.json does not say why.',
  ]);
  expect(unexplained(proofs, { speed: { slow: because } })).toEqual([]);
  expect(unexplained(proofs, { speed: { slow: because, fast: because } })).toEqual([
    'speed: fast has a reason in src/proof/reasons.json, and misses no bar.',
  ]);
});

test('the page puts first what its words put first, and what is new last', () => {
  const names = inOrder([proof('new', []), proof('bytes', []), proof('fuzz', [])]);
  expect(names.map(({ name }) => name)).toEqual(['fuzz', 'bytes', 'new']);
});

test('the command that most figures come from stands under the table', () => {
  const figures = [figure('a', true, 'x'), figure('b', true, 'y'), figure('c', true, 'y')];
  expect(commonCommand(proof('speed', figures))).toBe('y');
});

test('what a test leaves in another form is refused', () => {
  expect(readLeft(JSON.stringify({ name: 'a', figures: [figure('a', true)] }))).toHaveLength(1);
  expect(() => readLeft(JSON.stringify({ name: 'a', figures: [{ what: 'a' }] }))).toThrow();
});
