/** One seed in a thread of its own. */
import { parentPort, workerData } from 'node:worker_threads';
import { decodeTable } from '../../diagnosis/index.ts';
import { keptTable } from '../../diagnosis/kept-table.ts';
import { seenWith, type Counts } from './seen.ts';

const { seed, counts } = workerData as { readonly seed: number; readonly counts: Counts };
parentPort?.postMessage(seenWith(decodeTable(keptTable), seed, counts, console.log));
