import type { Found } from './found.ts';
import { words } from './standing-words.en.ts';

const size = (bytes: number): string => `${(bytes / 1e6).toFixed(1)}\u00a0MB`;

/** What was found, as a sentence. */
export function said(found: Found): string {
  if (!('standing' in found)) return words[found.kind];
  const { have, of, bytes, sent } = found.standing;
  return words[found.kind]({
    have: String(have),
    of: String(of),
    size: size(bytes),
    sent: size(sent),
  });
}
