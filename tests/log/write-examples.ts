// Writes the example logs that the page offers: `node tests/log/write-examples.ts`.
import { mkdirSync, writeFileSync } from 'node:fs';
import { EXAMPLES, exampleLog } from '../../src/log/examples/logs.ts';

mkdirSync('public/logs', { recursive: true });
for (const id of EXAMPLES) writeFileSync(`public/logs/${id}.csv`, exampleLog(id));
