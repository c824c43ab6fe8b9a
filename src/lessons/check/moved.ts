import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { movedSchema } from '../lesson-schema.ts';
import { inFile, type Fault } from './fault.ts';
import type { Known } from './known.ts';
import { allowedWords } from './nearest.ts';
import { readYaml } from './yaml-text.ts';

/** Places that have moved lead to lessons that are there. Whether the place itself is there, the link check of the build says. */
export function checkMoved(root: string, known: Known): readonly Fault[] {
  const file = join(root, 'moved.yaml').replaceAll('\\', '/');
  if (!existsSync(file)) return [];
  const text = readFileSync(file, 'utf8');
  const { value, faults, placeOf } = readYaml(text, movedSchema);
  const read = movedSchema.safeParse(value);
  if (!read.success) return inFile(file, text, faults);
  const lost = Object.entries(read.data).flatMap(([from, places]) =>
    Object.entries(places).flatMap(([was, to]) => {
      const [lesson = ''] = to.split('#');
      if (known.lessons.has(lesson)) return [];
      const sentence = `"${was}" leads to the lesson "${lesson}", which is not in the course. ${allowedWords(lesson, known.lessons.keys())}`;
      return [{ offset: placeOf([from, was]), sentence }];
    }),
  );
  return inFile(file, text, lost);
}
