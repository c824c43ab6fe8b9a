import type { Entry } from '../numbers/entry.ts';
import { numbers } from '../numbers/index.ts';
import { variationNumber } from '../variations/index.ts';
import { allowedWords } from './check/nearest.ts';

/** What a writer is told who names a number that is not there. */
export const noNumber = (id: string): string =>
  `There is no number "${id}". ${allowedWords(id, numbers.keys(), 'src/numbers')}`;

/** The number of that name, for <Num id="…" /> and {= id} alike; throws where there is none. */
export function numberNamed(id: string): Entry {
  const found = numbers.get(id) ?? variationNumber(id);
  if (found === undefined) throw new Error(noNumber(id));
  return found;
}
