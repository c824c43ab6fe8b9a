/** Fetches what a round needs. Whatever comes is read strictly; what did not come is said, and can be asked for again. */
import { readBankIndex, type BankIndex } from '../quiz/bank-index.ts';
import { questionsAddress } from '../widgets/retrieval/address.ts';

/** A line that hangs longer than this is as good as gone [ms]. */
const PATIENCE_MS = 20_000;

/**
 * Why something did not come: no connection, an answer of the server that is not the file, a file that is not ours; `stuck` is a
 * script that some browsers ask for once in the life of a page.
 */
export type Miss = 'offline' | 'refused' | 'foreign' | 'stuck';
export type Loaded<T> = { readonly got: T } | { readonly miss: Miss };

export async function load<T>(address: string, read: (text: string) => T): Promise<Loaded<T>> {
  let text: string;
  try {
    // Asked anew each time: a log-in page that came instead must not stay.
    const response = await fetch(address, {
      cache: 'no-cache',
      signal: AbortSignal.timeout(PATIENCE_MS),
    });
    if (!response.ok) return { miss: 'refused' };
    text = await response.text();
  } catch {
    return { miss: 'offline' };
  }
  try {
    return { got: read(text) };
  } catch {
    return { miss: 'foreign' };
  }
}

export const loadIndex = (base: string): Promise<Loaded<BankIndex>> =>
  load(questionsAddress(base, 'index'), readBankIndex);
