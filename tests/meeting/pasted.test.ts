import { expect, test } from 'vitest';
import { readPasted } from '../../src/meeting/pasted.ts';

const SITE = 'https://example.org/hot/';
const read = (text: string) => readPasted(text, SITE);

test('a state of a simulation, also where its page carries another one', () => {
  const state = '?gap-or-hole=1~temp.90#gap-or-hole';
  const href = `/lessons/thin-gap-open-hole/${state}`;
  expect(read(`https://example.org/hot${href}`)).toEqual({ kind: 'simulation', href });
  expect(
    read(`  https://example.org/hot/lessons/thin-gap-open-hole/?fluid=1~temp.2&${state.slice(1)} `),
  ).toEqual({ kind: 'simulation', href });
});

test('a practice case, written or made', () => {
  expect(read(`${SITE}practise/case/?case=stuck-in-third`)).toEqual({
    ...{ kind: 'case', search: '?case=stuck-in-third' },
  });
  expect(read(`${SITE}practise/case/?number=4711&level=2&on=second`)).toMatchObject({
    kind: 'case',
  });
});

test('all else is told apart', () => {
  expect(read('')).toEqual({ kind: 'none' });
  expect(read('see the crack lesson')).toEqual({ kind: 'none' });
  for (const text of ['hello', 'lessons/thin-gap-open-hole/', 'mailto:x@example.org'])
    expect(read(text), text).toEqual({ kind: 'none' });
  expect(read('/hot/practise/case/?case=a')).toEqual({ kind: 'case', search: '?case=a' });
  expect(read('https://example.com/hot/practise/case/?case=a')).toEqual({ kind: 'elsewhere' });
  expect(read('https://example.org/other/')).toEqual({ kind: 'elsewhere' });
  expect(read(`${SITE}glossary/`)).toEqual({ kind: 'page' });
  expect(read(`${SITE}lessons/thin-gap-open-hole/?gap-or-hole=<b>#gap-or-hole`)).toEqual({
    kind: 'page',
  });
});
