import type { Figure } from './form.ts';
import { unitTests } from './run.ts';

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
    ['rival'],
    'npx vitest run rival',
  ),
];
