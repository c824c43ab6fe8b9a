// Runs at the end of every build, and fails it: budgets, markup the policy would break, links.
import { brokenOutline } from './headings.ts';
import { brokenLinks } from './links.ts';
import { forbiddenMarkup } from './markup.ts';
import { overBudget, pageCost } from './budgets.ts';
import { builtPages, dist } from './pages.ts';

const pages = builtPages();
if (pages.length === 0) throw new Error(`There are no pages in ${dist}.`);
const costs = pages.map((page) => pageCost(page, dist));
const kB = (bytes: number): string => (bytes / 1000).toFixed(1).padStart(6);

console.log('   page kB  script kB  (compressed)');
for (const { address, total, script } of costs) {
  console.log(`   ${kB(total)}   ${kB(script)}    ${address}`);
}
const wrong = [
  ...costs.flatMap(overBudget),
  ...pages.flatMap(forbiddenMarkup),
  ...pages.flatMap(brokenOutline),
  ...brokenLinks(pages, dist),
];
for (const sentence of wrong) console.error(`   ${sentence}`);
if (wrong.length > 0) {
  console.error(`The build has ${wrong.length} ${wrong.length === 1 ? 'fault' : 'faults'}.`);
  process.exit(1);
}
