import { workerAt } from '../ui/page-worker.ts';
import type { Answer, Ask } from './messages.ts';
import address from './think-worker.ts?worker&url';

/** A planner of its own for each that asks. */
export const startWorker = workerAt<Ask, Answer>('planner', address, { kind: 'lost' });
