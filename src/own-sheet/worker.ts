// Works on a sheet away from the page, so that the page answers while a table is made.
import type { Answer, Ask } from './messages.ts';
import { sheetWork } from './work.ts';

const work = sheetWork((answer: Answer) => postMessage(answer));
addEventListener('message', ({ data }: MessageEvent<Ask>) => work(data));
