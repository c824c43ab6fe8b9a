// npm run table: works out the planner's tables for the two training transmissions and keeps them beside the planner. It takes
// about a minute for each. tests/diagnosis/kept-table.test.ts fails when the engine has moved away from what is kept.
import { writeFileSync } from 'node:fs';
import { secondSheet, trainingSheet, type TransmissionSheet } from '../engine/index.ts';
import { sheetWork } from '../own-sheet/work.ts';

/** By the work that a browser does for a sheet of one's own. */
function keep(sheet: TransmissionSheet, file: string, name: string): void {
  let told = 0;
  let text = '';
  sheetWork((answer) => {
    if (answer.kind === 'table') ({ text } = answer);
    else if (answer.kind === 'progress' && answer.share >= told + 0.1) {
      told = answer.share;
      console.log(`${sheet.name}: ${Math.round(100 * told)} %`);
    }
  })({ kind: 'table', sheet });
  writeFileSync(
    new URL(`../diagnosis/${file}.ts`, import.meta.url),
    `// Made by npm run table; not written by hand.\nexport const ${name} =\n  '${text}';\n`,
  );
  console.log(`kept: ${(text.length / 1000).toFixed(0)} kB of text`);
}

keep(trainingSheet, 'kept-table', 'keptTable');
keep(secondSheet, 'kept-second-table', 'keptSecondTable');
