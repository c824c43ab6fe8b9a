/** The practice cases that are written, in their order. */
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'yaml';
import { caseSchema, type PracticeCase } from './case-schema.ts';

/** A case with the name of its file. */
export interface WrittenCase extends PracticeCase {
  readonly id: string;
}

const folder = join('content', 'en', 'cases');

/** Reads all of them; throws on the first that does not keep the form, with its file. */
export function writtenCases(): readonly WrittenCase[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith('.yaml'))
    .map((name) => {
      const read = caseSchema.safeParse(parse(readFileSync(join(folder, name), 'utf8')));
      if (!read.success) {
        const [issue] = read.error.issues;
        throw new Error(
          `${join(folder, name)}: ${issue?.path.join('.') ?? ''} ${issue?.message ?? 'cannot be read'}.`,
        );
      }
      return { ...read.data, id: name.replace(/\.yaml$/, '') };
    })
    .sort((a, b) => a.order - b.order);
}
