/** What somebody fills in for a sheet, as typed; and what it comes to once it is read. */
import type { UnitSystem } from '../quantity/unit-system.ts';
import { readSeed } from '../quiz/on-paper/seed.ts';
import { FEWEST, MOST } from '../quiz/on-paper/sheets.ts';
import { readVersion } from '../quiz/on-paper/version.ts';
import { words } from './words.en.ts';

export interface Lesson {
  readonly id: string;
  readonly title: string;
  /** How many questions it has. */
  readonly questions: number;
}
export interface Area {
  readonly id: string;
  readonly title: string;
  readonly lessons: readonly Lesson[];
}

export interface Typed {
  readonly lessons: ReadonlySet<string>;
  readonly count: string;
  readonly units: UnitSystem;
  readonly seed: string;
  readonly version: string;
}
export interface Choice {
  /** In the order of the course. */
  readonly lessons: readonly Lesson[];
  readonly all: boolean;
  readonly count: number;
  readonly units: UnitSystem;
  readonly seed: string;
  /** Of the sheet that is to be printed again; empty for a new one. */
  readonly version: string;
}
export type Field = 'lessons' | 'count' | 'seed' | 'version';
export type Faults = Partial<Record<Field, string>>;

export const lessonsOf = (areas: readonly Area[]): readonly Lesson[] =>
  areas.flatMap(({ lessons }) => lessons);

export const questionsIn = (lessons: readonly Lesson[]): number =>
  lessons.reduce((sum, { questions }) => sum + questions, 0);

const fault = words.faults;
const range = { least: String(FEWEST), most: String(MOST) };

/** A sentence for each field that cannot be taken, or what was chosen. */
export function readChoice(typed: Typed, areas: readonly Area[]): Choice | { faults: Faults } {
  const every = lessonsOf(areas);
  const lessons = every.filter(({ id }) => typed.lessons.has(id));
  const count = readCount(typed.count, questionsIn(lessons));
  const seed = readSeed(typed.seed);
  const version = readVersion(typed.version);
  const faults: Faults = {
    ...(lessons.length === 0 && { lessons: fault.noLesson }),
    ...(typeof count === 'string' && { count }),
    ...(!seed.ok && {
      seed:
        seed.fault === 'sign'
          ? fault.seed.sign({ sign: named(seed.sign) })
          : fault.seed[seed.fault],
    }),
    ...(version === undefined && { version: fault.version }),
  };
  if (typeof count === 'string' || !seed.ok || version === undefined || lessons.length === 0)
    return { faults };
  const all = lessons.length === every.length;
  return { lessons, all, count, units: typed.units, seed: seed.seed, version };
}

const named = (sign: string): string => (/\s/u.test(sign) ? fault.seed.space : `“${sign}”`);

function readCount(typed: string, there: number): number | string {
  const text = typed.trim();
  if (text === '') return fault.count.none(range);
  if (!/^\d+$/u.test(text)) return fault.count.notWhole({ ...range, typed: text });
  const count = Number(text);
  if (count < FEWEST || count > MOST) return fault.count.outside({ ...range, typed: text });
  // Without a lesson that is what is said.
  if (there > 0 && count > there) return fault.count.tooMany({ there: String(there) });
  return count;
}
