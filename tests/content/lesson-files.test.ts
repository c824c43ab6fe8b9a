import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { parse } from 'yaml';
import { describe, expect, test } from 'vitest';
import { course } from '../../src/lessons/course.ts';
import { glossarySchema, lessonSchema, sourceSchema } from '../../src/lessons/lesson-schema.ts';

const files = (folder: string, ending: string) =>
  readdirSync(join('content', folder))
    .filter((name) => name.endsWith(ending))
    .map((name) => ({
      id: basename(name, ending),
      text: readFileSync(join('content', folder, name), 'utf8'),
    }));

const lessons = files('lessons', '.mdx').map(({ id, text }) => {
  const [, head = '', body = ''] = /^---\n([^]*?)\n---\n([^]*)$/.exec(text) ?? [];
  return { id, body, head: lessonSchema.parse(parse(head)) };
});
const glossary = files('glossary', '.yaml').map(({ id, text }) => ({
  id,
  data: glossarySchema.parse(parse(text)),
}));
const sources = files('sources', '.yaml').map(({ id, text }) => ({
  id,
  data: sourceSchema.parse(parse(text)),
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
  expect(sources.length).toBeGreaterThan(0);
});

test('the course plan has sixteen lessons, each after those it needs', () => {
  expect(course).toHaveLength(16);
  const before = new Set<string>();
  for (const { id, needs } of course) {
    expect([...before], `${id} needs`).toEqual(expect.arrayContaining([...needs]));
    before.add(id);
  }
  expect(before.size).toBe(16);
});

describe.each(lessons)('the lesson $id', ({ id, body, head }) => {
  test('stands in the course plan under the same id, place and needs', () => {
    expect(head.id).toBe(id);
    const planned = course[head.order - 1];
    expect(planned?.id).toBe(id);
    expect(head.needs).toEqual(planned?.needs);
  });

  test('has words and tags, no code', () => {
    expect(body).not.toMatch(/^\s*(import|export)\b/m);
    expect(body).not.toMatch(/<[a-z]+[\s>]/);
    expect(body).not.toMatch(/\sstyle=/);
  });

  test('has the lesson form, in order', () => {
    const at = ['<Section ', '<Mistake>', '<Recap>', '<Tasks>', '<Retrieval '].map((tag) =>
      body.indexOf(tag),
    );
    expect(at, 'every part is there').not.toContain(-1);
    expect(at, 'in order').toEqual([...at].sort((a, b) => a - b));
    for (const tag of ['<Mistake>', '<Recap>', '<Tasks>', '<Retrieval ']) {
      expect(body.split(tag), `${tag} once`).toHaveLength(2);
    }
    expect(body).toContain(`<Retrieval lesson="${id}" />`);
  });

  test('has a recap of three to seven lines', () => {
    const [, recap = ''] = /<Recap>([^]*?)<\/Recap>/.exec(body) ?? [];
    const lines = recap.match(/^- /gm) ?? [];
    expect(lines.length).toBeGreaterThanOrEqual(3);
    expect(lines.length).toBeLessThanOrEqual(7);
  });

  test('has tasks that go finish, diagnose, decide, each with its explained answer', () => {
    const tasks = body.match(/<Task [^]*?<\/Task>/g) ?? [];
    const kinds = tasks.map((task) => /kind="(\w+)"/.exec(task)?.[1]);
    const order = ['finish', 'diagnose', 'decide'];
    expect([...new Set(kinds)]).toEqual(order);
    for (const task of tasks) expect(task).toMatch(/<Solution>[^]{40,}<\/Solution>/);
  });

  test('explains a term at its first use, once', () => {
    const used = Array.from(body.matchAll(/<Term id="([^"]+)"/g), ([, term]) => term);
    expect(used.filter((term, index) => used.indexOf(term) !== index)).toEqual([]);
  });
});

test('banned filler is nowhere in the words', () => {
  const found = prose.flatMap(({ file, text }) =>
    Array.from(text.matchAll(/\b(simply|just|obviously)\b/gi), ([word]) => `${file}: ${word}`),
  );
  expect(found).toEqual([]);
});

test('glossary entries point to entries and lessons that are there, in few words', () => {
  const ids = new Set(glossary.map(({ id }) => id));
  const planned = new Set(course.map(({ id }) => id));
  for (const { id, data } of glossary) {
    for (const other of data.see) expect(ids, `${id} sees`).toContain(other);
    if (data.lesson !== undefined) expect(planned, `${id} lesson`).toContain(data.lesson);
    expect(data.meaning.split(/\s+/).length, `words in ${id}`).toBeLessThanOrEqual(60);
  }
});

test('every citation has its source', () => {
  const cited = new Set(
    prose.flatMap(({ text }) => Array.from(text.matchAll(/<Src id="([^"]+)"/g), ([, id]) => id)),
  );
  const ids = sources.map(({ id }) => id);
  for (const id of cited) expect(ids).toContain(id);
});
