// Reads a log away from the page, so that the page answers while 200,000 rows are read.
import { logWork } from './answer.ts';
import type { Answer, Ask } from './messages.ts';

const work = logWork((answer: Answer) => postMessage(answer));
addEventListener('message', ({ data }: MessageEvent<Ask>) => void work(data));
