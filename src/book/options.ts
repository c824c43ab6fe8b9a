import { parseArgs } from 'node:util';
import { Refusal } from './refusal.ts';
import { words } from './words.en.ts';

export type Paper = 'letter' | 'a4';
export type Units = 'us' | 'si';

export interface Options {
  readonly paper: Paper;
  readonly units: Units;
  /** Numbers of lessons, in order. */
  readonly lessons: readonly number[];
  readonly out: string;
}

const { refuse } = words;
const isPaper = (text: string): text is Paper => text === 'letter' || text === 'a4';
const isUnits = (text: string): text is Units => text === 'us' || text === 'si';

/** "1-3,7" of so many lessons; undefined where it is none of that. */
function lessonsOf(text: string, most: number): readonly number[] | undefined {
  const found = new Set<number>();
  for (const part of text.split(',')) {
    const [, first, last = first] = /^\s*(\d{1,3})(?:-(\d{1,3}))?\s*$/u.exec(part) ?? [];
    const [from, to] = [Number(first), Number(last)];
    if (first === undefined || from < 1 || to > most || from > to) return undefined;
    for (let number = from; number <= to; number += 1) found.add(number);
  }
  return [...found].sort((a, b) => a - b);
}

function parsed(args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      options: {
        paper: { type: 'string', default: 'letter' },
        units: { type: 'string', default: 'us' },
        lessons: { type: 'string' },
        out: { type: 'string' },
      },
    }).values;
  } catch (error) {
    const option = /'(-{0,2}[^'\s]*)/u.exec(error instanceof Error ? error.message : '')?.[1] ?? '';
    throw new Refusal(refuse.unknown({ option }));
  }
}

/** What was asked for on the command line, of a course of so many lessons. */
export function readOptions(args: readonly string[], most: number): Options {
  const { paper, units, lessons, out } = parsed(args);
  if (!isPaper(paper)) throw new Refusal(refuse.paper({ given: paper }));
  if (!isUnits(units)) throw new Refusal(refuse.units({ given: units }));
  const numbers = lessonsOf(lessons ?? `1-${most}`, most);
  if (numbers === undefined) {
    throw new Refusal(refuse.lessons({ given: lessons ?? '', most: String(most) }));
  }
  if (out !== undefined && !/\.pdf$/iu.test(out)) throw new Refusal(refuse.out({ given: out }));
  const file = `dist.book/slips-when-hot-${paper}-${units}.pdf`;
  return { paper, units, lessons: numbers, out: out ?? file };
}
