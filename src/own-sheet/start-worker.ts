import { workerAt } from '../ui/page-worker.ts';
import type { Answer, Ask } from './messages.ts';
import address from './worker.ts?worker&url';

/** A worker for one sheet: to cancel is to end it. */
export const startWorker = workerAt<Ask, Answer>('own-sheet', address, { kind: 'stopped' });
/** Changes with whatever a table depends on: the build names the worker by what is in it. */
export const CODE: string = address;
