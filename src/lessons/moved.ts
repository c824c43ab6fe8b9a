/**
 * Places of lessons that stand elsewhere now: a lesson was split, or a section got another title. Links to them are in
 * customers' mails, in copied states of simulations and in what a device keeps, so they go on leading somewhere.
 */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'yaml';
import { languages, source } from '../language/languages.ts';
import { contentOf } from '../language/pages.ts';
import { movedSchema } from './lesson-schema.ts';

/** For the lesson itself, where it is gone as a whole. */
export const WHOLE = 'page';

export interface MovedPlace {
  /** What the old address had behind its #; WHOLE for the lesson itself. */
  readonly was: string;
  /** The lesson that has it now, and the place there; null for its top. */
  readonly lesson: string;
  readonly at: string | null;
}

/** By the lesson that had them. Throws a sentence on what is no list of places. */
export function readMoved(text: string): ReadonlyMap<string, readonly MovedPlace[]> {
  const read = movedSchema.parse(parse(text) ?? {});
  return new Map(
    Object.entries(read).map(([from, places]) => [
      from,
      Object.entries(places).map(([was, to]) => {
        const [lesson = '', at = null] = to.split('#');
        return { was, lesson, at };
      }),
    ]),
  );
}

const file = join(contentOf(source), 'moved.yaml');

/** All places that have moved; the English list holds for every language, because sections keep their addresses. */
export const moved = existsSync(file)
  ? readMoved(readFileSync(file, 'utf8'))
  : new Map<string, readonly MovedPlace[]>();

export const addressOf = ({ lesson, at }: MovedPlace): string =>
  `${languages[source].base}lessons/${lesson}/${at === null ? '' : `#${at}`}`;
