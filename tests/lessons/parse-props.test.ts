import { z } from 'astro/zod';
import { expect, test } from 'vitest';
import { parseProps } from '../../src/lessons/parse-props.ts';
import { slug } from '../../src/lessons/slug.ts';

const schema = z.object({ kind: z.enum(['finish', 'decide']), title: z.string().optional() });
const page = new URL('http://localhost/lessons/x/');
const parse = (props: Record<string, unknown>) => parseProps('Task', schema, props, page);

test('good props pass', () => {
  expect(parse({ kind: 'finish' })).toEqual({ kind: 'finish' });
});

test.each([
  [
    { kind: 'finish', kidn: 1 },
    '<Task> on /lessons/x/: it does not know "kidn". Its props: kind, title.',
  ],
  [{}, '"kind" is missing'],
  [{ kind: 'guess' }, '"kind" is "guess"'],
  [{ kind: 'finish', title: 3 }, '"title" is 3'],
])('%o is refused in words', (props, sentence) => {
  expect(() => parse(props)).toThrow(sentence);
});

test('a tag without props says so', () => {
  expect(() => parseProps('Recap', z.object({}), { loud: true }, page)).toThrow(
    '<Recap> on /lessons/x/: it does not know "loud". It takes no props.',
  );
});

test.each([
  ['Hot, thin fluid', 'hot-thin-fluid'],
  ['What’s at 100 °C?', 'whats-at-100-c'],
  ['  Été  ', 'ete'],
])('the heading "%s" has the address %s', (words, address) => {
  expect(slug(words)).toBe(address);
});
