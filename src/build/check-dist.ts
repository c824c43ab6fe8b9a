import { brokenOutline } from './headings.ts';
import { brokenLinks } from './links.ts';
import { forbiddenMarkup } from './markup.ts';
import { overBudget, pageCost } from './budgets.ts';
import { builtPages } from './pages.ts';

const kB = (bytes: number): string => (bytes / 1000).toFixed(1).padStart(6);

/**
 * One sentence for each fault of a built site: budgets, markup that the policy would break, links.
 * Prints what each page costs.
 */
export function checkSite(folder: string): string[] {
  const pages = builtPages(folder);
  if (pages.length === 0) return [`There are no pages in ${folder}.`];
  const costs = pages.map((page) => pageCost(page, folder));
  console.log('   page kB  script kB  (compressed)');
  for (const { address, total, script } of costs) {
    console.log(`   ${kB(total)}   ${kB(script)}    ${address}`);
  }
  return [
    ...costs.flatMap(overBudget),
    ...pages.flatMap(forbiddenMarkup),
    ...pages.flatMap(brokenOutline),
    ...brokenLinks(pages, folder),
  ];
}
