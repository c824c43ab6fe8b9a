/**
 * The lessons that are written in a language, by its folder: the collections of a build hold its own
 * language alone, and a translation has to name lessons that are in English only.
 */
import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'yaml';
import { contentOf } from '../language/pages.ts';
import type { LanguageId } from '../language/languages.ts';
import { lessonSchema, type Lesson } from './lesson-schema.ts';

/** In the order of the course. */
export function lessonsIn(id: LanguageId): readonly Lesson[] {
  const folder = join(contentOf(id), 'lessons');
  if (!existsSync(folder)) return [];
  return readdirSync(folder)
    .filter((name) => name.endsWith('.mdx'))
    .map((name) => {
      const [, head = ''] =
        /^---\n([^]*?)\n---\n/.exec(readFileSync(join(folder, name), 'utf8')) ?? [];
      return lessonSchema.parse(parse(head));
    })
    .sort((a, b) => a.order - b.order);
}
