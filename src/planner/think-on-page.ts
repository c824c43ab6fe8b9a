import type { Think } from './messages.ts';
import { thinking } from './thinking.ts';

/** So long a page may be held up at once [ms]: a key or a press is answered within a frame, also where this takes longer. */
const SLICE_MS = 8;

/** Fetched where no worker can be had. */
export const thinkOnPage: Think = (told) => thinking(told, SLICE_MS);
