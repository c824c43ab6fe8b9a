import type { Figure } from './form.ts';
import { leftBy } from './run.ts';

const COMMAND = 'npm run quality -- fuzz';
const ENOUGH = 200_000;

/** Broken input by the thousand: tests/fuzz. */
export function fuzz(): Figure[] {
  const figures = leftBy('vitest', ['run', '--project', 'fuzz'], COMMAND);
  const total = figures.reduce(
    (sum, { value }) => (typeof value === 'number' ? sum + value : sum),
    0,
  );
  return [
    {
      what: 'All broken input together: read within its limits, or refused in a sentence',
      value: total,
      bar: `${ENOUGH.toLocaleString('en-US')} or more`,
      met: total >= ENOUGH,
      command: COMMAND,
    },
    ...figures,
  ];
}
