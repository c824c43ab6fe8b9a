// What the check of the content (src/lessons/check) leaves to tests: it holds each file against its form, before every build.
import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { parse } from 'yaml';
import { expect, test } from 'vitest';
import { course } from '../../src/lessons/course.ts';
import { glossarySchema, lessonSchema } from '../../src/lessons/lesson-schema.ts';

const files = (folder: string, ending: string) =>
  readdirSync(join('content', 'en', folder))
    .filter((name) => name.endsWith(ending))
    .map((name) => ({
      id: basename(name, ending),
      text: readFileSync(join('content', 'en', folder, name), 'utf8'),
    }));

const lessons = files('lessons', '.mdx').map(({ id, text }) => {
  const [, head = '', body = ''] = /^---\n([^]*?)\n---\n([^]*)$/.exec(text) ?? [];
  return { id, body, head: lessonSchema.parse(parse(head)) };
});
const glossary = files('glossary', '.yaml').map(({ id, text }) => ({
  id,
  data: glossarySchema.parse(parse(text)),
}));
const prose = [
  ...lessons.map(({ id, body }) => ({ file: `lessons/${id}`, text: body })),
  ...lessons.map(({ id, head }) => ({
    file: `lessons/${id}`,
    text: `${head.hook} ${head.description}`,
  })),
  ...files('pages', '.mdx').map(({ id, text }) => ({ file: `pages/${id}`, text })),
  ...glossary.map(({ id, data }) => ({ file: `glossary/${id}`, text: data.meaning })),
];

test('there is content to check', () => {
  expect(lessons.length).toBeGreaterThan(0);
  expect(glossary.length).toBeGreaterThan(0);
});

test('the course plan names each lesson once, after those it needs', () => {
  const before = new Set<string>();
  for (const { id, needs } of course) {
    expect([...before], `${id} needs`).toEqual(expect.arrayContaining([...needs]));
    before.add(id);
  }
  expect(before.size).toBe(course.length);
});

test('banned filler is nowhere in the words', () => {
  const found = prose.flatMap(({ file, text }) =>
    Array.from(text.matchAll(/\b(simply|just|obviously)\b/gi), ([word]) => `${file}: ${word}`),
  );
  expect(found).toEqual([]);
});
