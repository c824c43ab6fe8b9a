import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';

const early = readFileSync('src/rounds/waits/early.js');

/** What the policy of a page names early.js by. The page itself has to say it: the head is written before what is in it. */
export const earlyHash = `sha256-${createHash('sha256').update(early).digest('base64')}` as const;
