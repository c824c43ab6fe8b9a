// Weighs readings and ranks tests away from the page, so that the page answers meanwhile.
import type { Answer, Ask } from './messages.ts';
import { thinking } from './thinking.ts';

/** So long a later question may wait [ms]. */
const SLICE_MS = 30;

const { ask } = thinking((answer: Answer) => postMessage(answer), SLICE_MS);
addEventListener('message', ({ data }: MessageEvent<Ask>) => ask(data));
