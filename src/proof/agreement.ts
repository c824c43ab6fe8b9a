import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Figure } from './form.ts';
import { root, unitTests } from './run.ts';

/** Files that hold our answers against those that a program of somebody else's language froze. */
const rivals = (): readonly string[] =>
  globSync('tests/**/*.test.{ts,tsx}', { cwd: root })
    .filter((file) => !file.startsWith('tests/build/'))
    .filter((file) => /truth\/[\w-]+\.json/.test(readFileSync(join(root, file), 'utf8')))
    .toSorted();

function row(what: string, files: readonly string[], command: string): Figure {
  const ended = [...unitTests(files).values()];
  const passed = ended.filter((one) => one).length;
  return {
    what,
    value: `${passed} of ${ended.length}`,
    bar: 'all of them',
    met: ended.length > 0 && passed === ended.length,
    command,
  };
}

/** The model against books, standards and second programs. */
export const agreement = (): Figure[] => [
  row(
    'Examples that are printed in books, papers and standards: tests that agree',
    ['tests/published'],
    'npx vitest run tests/published',
  ),
  row(
    'A second program, in Python and from the equations alone: tests that agree',
    rivals(),
    'npx vitest run $(grep -rlE "truth/[a-z_-]+\\.json" tests --include=*.test.ts)',
  ),
];
