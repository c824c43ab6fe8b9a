// `npm run bench`: how fast the engine and the built page are on this machine, against what we aim
// at. It prints and never fails on a time: a shared machine is no ground to stop a merge.
// `npm run bench -- simulations` measures each simulation on a slow phone instead, `-- pages` the home page and the lessons, `-- work`
// practice and workshop: see the file of each name. With no further word it keeps its figures in a file of that name here, for /proof/.
import { writeFileSync } from 'node:fs';
import { availableParallelism, cpus } from 'node:os';
import { fileURLToPath } from 'node:url';
import { format, resolveConfig } from 'prettier';
import { benchEngagement } from './engagement.ts';
import { benchEngagementRivals } from './engagement-rivals.ts';
import { benchLog } from './log.ts';
import { benchPage } from './page.ts';
import { benchPages } from './pages.ts';
import { printTable } from './row.ts';
import { benchSimulations } from './simulations.ts';
import { benchSteady } from './steady.ts';
import { benchWork } from './work.ts';

const [cpu] = cpus();
console.log(
  `Node ${process.version}, ${cpu?.model ?? 'unknown processor'}, ${availableParallelism()} cores`,
);
const [part, ...asked] = process.argv.slice(2);
const parts = { simulations: benchSimulations, pages: benchPages, work: benchWork };
const chosen = Object.entries(parts).find(([name]) => name === part);
if (chosen === undefined) {
  const rows = [
    ...benchSteady(),
    ...benchEngagement(),
    ...benchEngagementRivals(),
    ...benchLog(),
    ...(await benchPage()),
  ];
  console.log(printTable(rows));
} else {
  const [name, bench] = chosen;
  const rows = await bench(asked);
  console.log(printTable(rows));
  if (asked.length === 0) {
    const kept = fileURLToPath(new URL(`./${name}.json`, import.meta.url));
    const text = JSON.stringify({ command: `npm run bench -- ${name}`, rows });
    writeFileSync(kept, await format(text, { ...(await resolveConfig(kept)), filepath: kept }));
  }
}
