/** Meetings: form, and everything a scene points at. */
import { chartIds } from '../../question-charts/index.ts';
import { readPassage } from '../../quiz/read-passage.ts';
import type { Question } from '../../quiz/schema.ts';
import { meetingSchema, MOST_OPTIONS, type WrittenScene } from '../../meeting/schema.ts';
import { noChart } from '../chart-named.ts';
import { measuredNames, stillDrawings } from '../drawing-names.ts';
import { numberNamed } from '../number-named.ts';
import { oneSystem } from './questions.ts';
import { inFile, type Fault, type Placed } from './fault.ts';
import type { Known } from './known.ts';
import { allowedWords } from './nearest.ts';
import { readYaml } from './yaml-text.ts';

interface File {
  readonly file: string;
  readonly id: string;
  readonly text: string;
}
/** What a meeting may point at, besides what every text may. */
export interface MeetingTargets {
  readonly cases: readonly string[];
  readonly questions: readonly Question[];
}
interface At {
  readonly path: readonly (string | number)[];
  readonly sentence: string;
}

export const drawingNames: readonly string[] = [...stillDrawings, ...measuredNames];
/** Of the bank, what a room can vote on: one right answer out of a handful. */
export const isVote = (question: Question): boolean =>
  question.kind === 'single'
    ? question.options.length <= MOST_OPTIONS
    : question.kind === 'number' && question.number.entry === 'choose';

export function checkMeeting(
  { file, text }: File,
  known: Known,
  targets: MeetingTargets,
): readonly Fault[] {
  const { value, faults, placeOf } = readYaml(text, meetingSchema);
  const meeting = meetingSchema.safeParse(value);
  const typed = Array.from(text.matchAll(oneSystem), ({ index, 0: words }): Placed => ({
    offset: index,
    sentence: `"${words}" is typed in one unit system. Write it as {quantity value}, such as {pressure 600} or {temperature 100}, or as {= number}, and it reads in both.`,
  })).filter(({ offset }) => !/\{[^{}\n]*$/.test(text.slice(0, offset)));
  if (!meeting.success) return inFile(file, text, [...faults, ...typed]);
  const { lesson, scenes } = meeting.data;
  const wrong: At[] = [
    ...(known.lessons.has(lesson)
      ? []
      : [
          {
            path: ['lesson'],
            sentence: `"lesson" is "${lesson}", which is not in the course. ${allowedWords(lesson, known.lessons.keys())}`,
          },
        ]),
    ...scenes.flatMap((scene, index) =>
      [...pointsAt(scene, targets), ...amounts(scene)].map(({ path, sentence }) => ({
        path: ['scenes', index, ...path],
        sentence: `Scene ${index + 1}: ${sentence}`,
      })),
    ),
  ];
  return inFile(file, text, [
    ...typed,
    ...wrong.map(({ path, sentence }) => ({ offset: placeOf(path), sentence })),
  ]);
}

const among = (
  key: string,
  what: string,
  name: string | undefined,
  allowed: readonly string[],
  listedIn?: string,
): readonly At[] =>
  name === undefined || allowed.includes(name)
    ? []
    : [
        {
          path: [key],
          sentence: `there is no ${what} "${name}". ${allowedWords(name, allowed, listedIn)}`,
        },
      ];

function pointsAt(scene: WrittenScene, { cases, questions }: MeetingTargets): readonly At[] {
  switch (scene.kind) {
    case 'say':
      return among('drawing', 'drawing', scene.drawing, drawingNames, 'drawing-names.ts');
    case 'picture':
      return [
        ...among('drawing', 'drawing', scene.drawing, drawingNames, 'drawing-names.ts'),
        ...(scene.chart === undefined || chartIds.includes(scene.chart)
          ? []
          : [{ path: ['chart'], sentence: noChart(scene.chart) }]),
      ];
    case 'case':
      return among('case', 'case', scene.case, cases, 'content/en/cases');
    case 'vote':
      return scene.question === undefined ? [] : askedFor(scene.question, questions);
    case 'simulation':
      return [];
  }
}

function askedFor(
  { lesson, id }: { readonly lesson: string; readonly id: string },
  questions: readonly Question[],
): readonly At[] {
  const ofLesson = questions.filter((question) => question.lesson === lesson && isVote(question));
  const found = questions.find((question) => question.id === id && question.lesson === lesson);
  const say = (sentence: string): readonly At[] => [{ path: ['question', 'id'], sentence }];
  if (found === undefined) {
    const elsewhere = questions.find((question) => question.id === id);
    return say(
      elsewhere === undefined
        ? `the lesson "${lesson}" has no question "${id}". ${allowedWords(
            id,
            ofLesson.map((question) => question.id),
            `content/en/questions/${lesson}.json`,
          )}`
        : `the question "${id}" belongs to the lesson "${elsewhere.lesson}".`,
    );
  }
  return isVote(found)
    ? []
    : say(
        `a room cannot vote on "${id}", which is of the kind "${found.kind}". It takes a "single" with at most ${MOST_OPTIONS} options, or a "number" to choose.`,
      );
}

/** Texts of a scene, with their places. */
function amounts(scene: WrittenScene): readonly At[] {
  return textsOf(scene, []).flatMap(({ path, words }) => {
    try {
      readPassage(words, numberNamed);
      return [];
    } catch (error) {
      return [{ path, sentence: error instanceof Error ? error.message : String(error) }];
    }
  });
}

interface Text {
  readonly path: readonly (string | number)[];
  readonly words: string;
}
const textsOf = (value: unknown, path: readonly (string | number)[]): readonly Text[] => {
  if (typeof value === 'string') return [{ path, words: value }];
  if (Array.isArray(value)) return value.flatMap((item, i) => textsOf(item, [...path, i]));
  if (typeof value === 'object' && value !== null)
    return Object.entries(value).flatMap(([key, inner]) => textsOf(inner, [...path, key]));
  return [];
};
