// `npm run bench`: how fast the engine and the built page are on this machine, against what we aim
// at. It prints and never fails on a time: a shared machine is no ground to stop a merge.
// `npm run bench -- simulations` measures each simulation on a slow phone instead: see simulations.ts. Of all of them, and beside no
// other build, it keeps the figures in simulations.json for the page /proof/.
import { writeFileSync } from 'node:fs';
import { availableParallelism, cpus } from 'node:os';
import { fileURLToPath } from 'node:url';
import { format, resolveConfig } from 'prettier';
import { benchEngagement } from './engagement.ts';
import { benchEngagementRivals } from './engagement-rivals.ts';
import { benchLog } from './log.ts';
import { benchPage } from './page.ts';
import { printTable } from './row.ts';
import { benchSimulations } from './simulations.ts';
import { benchSteady } from './steady.ts';

const [cpu] = cpus();
console.log(
  `Node ${process.version}, ${cpu?.model ?? 'unknown processor'}, ${availableParallelism()} cores`,
);
const [part, ...asked] = process.argv.slice(2);
const rows =
  part === 'simulations'
    ? await benchSimulations(asked)
    : [
        ...benchSteady(),
        ...benchEngagement(),
        ...benchEngagementRivals(),
        ...benchLog(),
        ...(await benchPage()),
      ];
console.log(printTable(rows));
if (part === 'simulations' && asked.length === 0) {
  const kept = fileURLToPath(new URL('./simulations.json', import.meta.url));
  const text = JSON.stringify({ command: 'npm run bench -- simulations', rows });
  writeFileSync(kept, await format(text, { ...(await resolveConfig(kept)), filepath: kept }));
}
