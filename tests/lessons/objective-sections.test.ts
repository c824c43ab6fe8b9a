import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { sectionOf } from '../../src/lessons/objective-sections.ts';
import { objectives } from '../../src/lessons/objectives.ts';
import { questionFile } from '../../src/lessons/question-bank.ts';
import { slug } from '../../src/lessons/slug.ts';

const sectionsIn = (lesson: string): readonly string[] =>
  Array.from(
    readFileSync(`content/en/lessons/${lesson}.mdx`, 'utf8').matchAll(
      /<Section title="([^"]+)"(?: id="([^"]+)")?>/gu,
    ),
    ([, title = '', id]) => id ?? slug(title),
  );

test.each(objectives)('$id leads to a section that its lesson has', ({ lesson, id }) => {
  expect(sectionsIn(lesson)).toContain(sectionOf[id]);
});

test('the questions of a lesson carry the sections with its objectives', () => {
  const { objectives: sent } = JSON.parse(questionFile('thin-gap-open-hole')) as {
    objectives: readonly unknown[];
  };
  expect(sent).toContainEqual({
    id: 'gap-hole-2',
    text: 'Use the viscous share to say why.',
    section: 'where-the-pressure-goes',
  });
});
