// Writes the example logs that the page offers: `node src/log/examples/write.ts`.
import { mkdirSync, writeFileSync } from 'node:fs';
import { EXAMPLES, exampleLog } from './logs.ts';

mkdirSync('public/logs', { recursive: true });
for (const id of EXAMPLES) writeFileSync(`public/logs/${id}.csv`, exampleLog(id));
