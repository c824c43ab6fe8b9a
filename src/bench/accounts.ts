// npm run accounts: works out what the customer of each car can say, and keeps it beside src/cases/accounts.ts. It takes a
// minute. tests/cases/kept-accounts.test.ts fails when the engine has moved away from what is kept.
import { writeFileSync } from 'node:fs';
import { packed, workOut } from '../cases/accounts.ts';

const rows = workOut().map((account) => `  [${packed(account).join(', ')}],`);
writeFileSync(
  new URL('../cases/kept-accounts.ts', import.meta.url),
  `// Made by npm run accounts; not written by hand.\nexport const keptAccounts: readonly (readonly number[])[] = [\n${rows.join('\n')}\n];\n`,
);
console.log(`kept: ${rows.length} cars`);
