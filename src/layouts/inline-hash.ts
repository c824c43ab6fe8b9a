import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';

/**
 * What the policy of a page names a script by that is sent inside it. The page itself has to say it: the head is written before what
 * is in it.
 *
 * @param path of its file, from the root of the project
 */
export const inlineHash = (path: string) =>
  `sha256-${createHash('sha256').update(readFileSync(path)).digest('base64')}` as const;
