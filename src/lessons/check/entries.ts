import { glossarySchema, sourceSchema } from '../lesson-schema.ts';
import { inFile, type Fault } from './fault.ts';
import type { Known } from './known.ts';
import { allowedWords } from './nearest.ts';
import { readYaml } from './yaml-text.ts';

interface File {
  readonly file: string;
  readonly id: string;
  readonly text: string;
}

/** More than this and it is a paragraph, not a meaning one reads in a bubble. */
const WORDS = 60;

export function checkTerm({ file, text }: File, known: Known): readonly Fault[] {
  const { value, faults, placeOf } = readYaml(text, glossarySchema);
  const entry = glossarySchema.safeParse(value);
  if (!entry.success) return inFile(file, text, faults);
  const { meaning, see, lesson } = entry.data;
  const count = meaning.split(/\s+/).length;
  return inFile(file, text, [
    ...(count > WORDS
      ? [
          {
            offset: placeOf(['meaning']),
            sentence: `"meaning" has ${count} words, and may have ${WORDS}.`,
          },
        ]
      : []),
    ...see.flatMap((id, index) =>
      known.terms.has(id)
        ? []
        : [
            {
              offset: placeOf(['see', index]),
              sentence: `"see" points at "${id}", and there is no such entry. ${allowedWords(id, known.terms.keys(), known.folders.glossary)}`,
            },
          ],
    ),
    ...(lesson !== undefined && !known.lessons.has(lesson)
      ? [
          {
            offset: placeOf(['lesson']),
            sentence: `"lesson" is "${lesson}", which is not in the course. ${allowedWords(lesson, known.lessons.keys())}`,
          },
        ]
      : []),
  ]);
}

export const checkSource = ({ file, text }: File): readonly Fault[] =>
  inFile(file, text, readYaml(text, sourceSchema).faults);
