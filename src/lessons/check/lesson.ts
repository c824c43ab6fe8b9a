import { course } from '../course.ts';
import { lessonSchema, pageSchema } from '../lesson-schema.ts';
import { objectivesOf } from '../objectives.ts';
import { checkAfterRun } from './after-run.ts';
import { checkBareNumbers } from './bare-numbers.ts';
import { checkBlankLines } from './blank-lines.ts';
import { inFile, type Fault, type Placed } from './fault.ts';
import { checkHeadings } from './headings.ts';
import type { Known } from './known.ts';
import { checkLessonForm } from './lesson-form.ts';
import { checkTags } from './mdx-tags.ts';
import { readMdx, type MdxText } from './mdx-text.ts';
import { allowedWords } from './nearest.ts';
import { checkSums } from './sums.ts';
import { readYaml, type YamlText } from './yaml-text.ts';

interface File {
  readonly file: string;
  /** The file's name without its ending. */
  readonly id: string;
  readonly text: string;
}

/** A lesson: front matter, tags, blank lines, parts, numbers. */
export function checkLesson({ file, id, text }: File, known: Known): readonly Fault[] {
  const mdx = readMdx(text);
  if ('offset' in mdx) return inFile(file, text, [mdx]);
  const head = readYaml(mdx.head, lessonSchema);
  return inFile(file, text, [
    ...inHead(mdx, [...head.faults, ...againstCourse(head, id)]),
    ...checkTags(mdx, known),
    ...checkHeadings(mdx),
    ...checkBlankLines(mdx),
    ...checkLessonForm(mdx, id, known),
    ...checkAfterRun(mdx),
    ...checkSums(mdx),
    ...checkBareNumbers(text, mdx.headAt + mdx.head.length, {
      reasons: record(record(head.value)['givens']) as Record<string, string>,
      placeOf: (given) => mdx.headAt + head.placeOf(['givens', given]),
    }),
  ]);
}

/** Another page of words and tags, such as the model page: it has no fixed parts. */
export function checkPage({ file, text }: File, known: Known): readonly Fault[] {
  const mdx = readMdx(text);
  if ('offset' in mdx) return inFile(file, text, [mdx]);
  return inFile(file, text, [
    ...inHead(mdx, readYaml(mdx.head, pageSchema).faults),
    ...checkTags(mdx, known),
    ...checkHeadings(mdx),
    ...checkBlankLines(mdx),
  ]);
}

const inHead = ({ headAt }: MdxText, faults: readonly Placed[]): readonly Placed[] =>
  faults.map(({ offset, sentence }) => ({ offset: offset + headAt, sentence }));

const record = (value: unknown): Record<string, unknown> =>
  typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : {};

/** The course plan and the file's name decide; the front matter repeats them for whoever reads the lesson. */
function againstCourse({ value, placeOf }: YamlText, id: string): readonly Placed[] {
  const head = record(value);
  const planned = course.find((lesson) => lesson.id === id);
  const faults: Placed[] = [];
  const say = (key: string, sentence: string) => faults.push({ offset: placeOf([key]), sentence });
  if (typeof head['id'] === 'string' && head['id'] !== id)
    say('id', `"id" is "${head['id']}", and the file is named ${id}.mdx. Both must be the same.`);
  if (planned === undefined) {
    const ids = course.map((lesson) => lesson.id);
    say(
      'id',
      `The course plan, src/lessons/course.ts, has no lesson "${id}". ${allowedWords(id, ids)}`,
    );
    return faults;
  }
  const place = course.indexOf(planned) + 1;
  if (Number.isInteger(head['order']) && head['order'] !== place)
    say(
      'order',
      `"order" is ${String(head['order'])}, and the course plan has this lesson at place ${place}.`,
    );
  if (Array.isArray(head['needs']) && head['needs'].join() !== planned.needs.join())
    say(
      'needs',
      `"needs" is [${head['needs'].join(', ')}], and the course plan, src/lessons/course.ts, says [${planned.needs.join(', ')}].`,
    );
  const aims = objectivesOf(id).length;
  if (aims < 3 || aims > 5)
    say(
      'id',
      `This lesson has ${aims} objectives in src/lessons/objectives.ts. A lesson has 3 to 5.`,
    );
  return faults;
}
