import { workerAt } from '../../ui/page-worker.ts';
import type { Answer, Ask } from './messages.ts';
import address from './worker.ts?worker&url';

/** A worker of its own for one log: to cancel is to end it. */
export const startWorker = workerAt<Ask, Answer>('log-reader', address, { kind: 'failed' });
