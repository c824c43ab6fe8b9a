// npm run table: works out the planner's table for the training transmission and keeps it beside the planner. It takes about
// a minute. tests/diagnosis/kept-table.test.ts fails when the engine has moved away from what is kept.
import { writeFileSync } from 'node:fs';
import { buildTable } from '../diagnosis/table.ts';
import { encodeTable } from '../diagnosis/table-code.ts';
import { training } from '../engine/index.ts';

const steps = buildTable(training);
let step = steps.next();
let told = 0;
while (step.done !== true) {
  if (step.value >= told + 0.1) {
    told = step.value;
    console.log(`${Math.round(100 * told)} %`);
  }
  step = steps.next();
}
const text = encodeTable(step.value);
writeFileSync(
  new URL('../diagnosis/kept-table.ts', import.meta.url),
  `// Made by npm run table; not written by hand.\nexport const keptTable =\n  '${text}';\n`,
);
console.log(`kept: ${(text.length / 1000).toFixed(0)} kB of text`);
