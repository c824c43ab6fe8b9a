// npm run accounts: works out what the customer of each car can say, and what its controller stores, and keeps both in
// src/cases. It takes a minute. tests/cases/kept-accounts.test.ts and kept-frames.test.ts fail when the engine has moved away
// from what is kept.
import { writeFileSync } from 'node:fs';
import { packed, workOut } from '../cases/accounts.ts';

const kept = (file: string, name: string, rows: readonly (readonly number[])[]): void => {
  const lines = rows.map((row) => `  [${row.join(', ')}],`);
  writeFileSync(
    new URL(`../cases/${file}`, import.meta.url),
    `// Made by npm run accounts; not written by hand.\nexport const ${name}: readonly (readonly number[])[] = [\n${lines.join('\n')}\n];\n`,
  );
  console.log(`${name}: ${rows.length} cars`);
};

kept('kept-accounts.ts', 'keptAccounts', workOut().map(packed));
// Which cars there are is read from the accounts just kept.
const { workOutFrames } = await import('../cases/frames.ts');
kept('kept-frames.ts', 'keptFrames', workOutFrames());
