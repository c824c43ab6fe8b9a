// The command line: prints every fault with its place and ends with 1 if there is one. Runs before each build.
import { contentRoot } from '../../language/content-root.ts';
import { checkContent } from './content.ts';
import { report } from './fault.ts';

const faults = checkContent(process.argv[2] ?? contentRoot());
for (const line of report(faults)) console.error(line);
if (faults.length > 0) process.exit(1);
