// npm run accuracy: how often the planner is right on cars that differ from its model, what it costs in minutes beside other
// orders on the same cars, and what becomes of cars that it does not know. It keeps its figures in accuracy.json beside this file and
// takes some ten minutes on two cores, a thread for each seed. npm run accuracy -- 20 tries 20 cars a seed and keeps nothing.
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { Worker } from 'node:worker_threads';
import { format, resolveConfig } from 'prettier';
import { chanceFrom } from '../diagnosis/index.ts';
import { outside, pairs, singles, sound } from './accuracy/figures.ts';
import { leakCoverage } from './accuracy/leak.ts';
import type { Counts, Seen } from './accuracy/seen.ts';

const SEEDS = [1, 2, 3, 4, 5, 6, 7, 8];
const CARS: Counts = { singles: 350, pairs: 75, outside: 50, sound: 25 };
const CRACKS = 1000;

const [given] = process.argv.slice(2).map(Number);
const counts: Counts =
  given === undefined ? CARS : { singles: given, pairs: given, outside: given, sound: given };

const began = performance.now();
const told = (text: string): void => {
  console.log(`${((performance.now() - began) / 1000).toFixed(0)} s  ${text}`);
};
const seenFrom = (seed: number): Promise<Seen> =>
  new Promise((done, failed) => {
    const worker = new Worker(new URL('./accuracy/worker.ts', import.meta.url), {
      workerData: { seed, counts },
    });
    worker.once('message', (seen: Seen) => {
      told(`seed ${seed}`);
      done(seen);
    });
    worker.once('error', failed);
  });

const running = SEEDS.map(seenFrom);
const leak = leakCoverage(given ?? CRACKS, chanceFrom(0));
told('cracks');
const seen = await Promise.all(running);
const figures = {
  command: 'npm run accuracy',
  seeds: SEEDS,
  oneFault: singles(seen),
  twoFaults: pairs(seen.flatMap((one) => one.pairs)),
  unlisted: outside(seen.flatMap((one) => one.outside)),
  healthy: sound(seen.flatMap((one) => one.sound)),
  leak,
};
const kept = fileURLToPath(new URL('./accuracy.json', import.meta.url));
const text = await format(JSON.stringify(figures), {
  ...(await resolveConfig(kept)),
  filepath: kept,
});
console.log(text);
if (given === undefined) writeFileSync(kept, text);
else console.log('Nothing was kept: npm run accuracy alone keeps its figures.');
