// npm run table: works out the planner's tables for the two training transmissions and keeps them beside the planner. It takes
// about a minute for each. tests/diagnosis/kept-table.test.ts fails when the engine has moved away from what is kept.
import { writeFileSync } from 'node:fs';
import { buildTable } from '../diagnosis/table.ts';
import { encodeTable } from '../diagnosis/table-code.ts';
import { secondTraining, training, type Plant } from '../engine/index.ts';

function keep(plant: Plant, file: string, name: string): void {
  const steps = buildTable(plant);
  let step = steps.next();
  let told = 0;
  while (step.done !== true) {
    if (step.value >= told + 0.1) {
      told = step.value;
      console.log(`${plant.name}: ${Math.round(100 * told)} %`);
    }
    step = steps.next();
  }
  const text = encodeTable(step.value);
  writeFileSync(
    new URL(`../diagnosis/${file}.ts`, import.meta.url),
    `// Made by npm run table; not written by hand.\nexport const ${name} =\n  '${text}';\n`,
  );
  console.log(`kept: ${(text.length / 1000).toFixed(0)} kB of text`);
}

keep(training, 'kept-table', 'keptTable');
keep(secondTraining, 'kept-second-table', 'keptSecondTable');
