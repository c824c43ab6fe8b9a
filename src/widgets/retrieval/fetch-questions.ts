/** Fetches a lesson's questions, then the script that asks them. */
import type { OfferWords } from './offer-words.ts';
import type * as PlayerScript from './player.ts';

/** A line that hangs longer than this is as good as gone. */
const PATIENCE_MS = 20_000;

type Player = Pick<typeof PlayerScript, 'open'>;

/**
 * One after the other: Firefox and Safari remember a script that could not be loaded, and refuse it
 * until the page is reloaded, while a fetch can be tried again in any browser. So without a
 * connection the fetch fails, and the script is not asked for. What is wrong with an answer that
 * did come, the script says: its words would cost every reader of every lesson.
 */
export async function fetchQuestions(
  address: string,
  lesson: string,
  words: Pick<OfferWords, 'offline' | 'stuck'>,
  player: () => Promise<Player> = () => import('./player.ts'),
): Promise<PlayerScript.Opened> {
  let text: string;
  let status: number;
  try {
    // Asked anew each time: a log-in page that came instead must not stay.
    const response = await fetch(address, {
      cache: 'no-cache',
      signal: AbortSignal.timeout(PATIENCE_MS),
    });
    status = response.status;
    text = await response.text();
  } catch {
    return { way: 'again', sentence: words.offline };
  }
  return player().then(
    ({ open }) => open(text, status, lesson),
    () => ({ way: 'reload', sentence: words.stuck }),
  );
}
