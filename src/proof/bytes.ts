import { budgets, pageCost, scriptLimit, type PageCost } from '../build/budgets.ts';
import { builtPages, dist, noSiteIn } from '../build/pages.ts';
import type { Figure } from './form.ts';

const command = 'npm run quality -- bytes';
const kB = (bytes: number): string => `${(bytes / 1000).toFixed(1)} kB`;

function largest(pages: readonly PageCost[], of: (page: PageCost) => number): PageCost {
  const [first] = pages.toSorted((a, b) => of(b) - of(a));
  if (first === undefined) throw new Error('There is no built site. Run "npm run build" first.');
  return first;
}

/** What pages weigh as they are sent, against the bars for a slow phone, without what the build allows some of them beyond. */
export function bytes(): Figure[] {
  const missing = noSiteIn(dist);
  if (missing !== undefined) throw new Error(missing);
  const pages = builtPages().map((page) => pageCost(page, dist));
  const heaviest = largest(pages, ({ total }) => total);
  const limits = pages.map((page) => ({ page, ...scriptLimit(page) }));
  const kinds = [...new Set(limits.map(({ kind }) => kind))];
  return [
    {
      what: 'The heaviest page, with everything on it',
      value: `${kB(heaviest.total)} (${heaviest.address}, of ${pages.length} pages)`,
      bar: `${budgets.page} kB`,
      met: heaviest.total <= budgets.page * 1000,
      command,
    },
    ...kinds.map((kind): Figure => {
      const all = limits.filter((one) => one.kind === kind);
      const over = all.filter(({ page, bar }) => page.script > bar * 1000);
      const worst = largest(
        all.map(({ page }) => page),
        ({ script }) => script,
      );
      const bar = all.find(({ page }) => page === worst)?.bar ?? 0;
      return {
        what: `Scripts of ${kind}: pages over the bar`,
        value: [
          `${over.length} of ${all.length}`,
          over.length === 0
            ? `the most is ${kB(worst.script)}`
            : over.map(({ page }) => `${page.address} ${kB(page.script)}`).join(', '),
        ].join(': '),
        bar: `0 over ${bar} kB`,
        met: over.length === 0,
        command,
      };
    }),
    {
      what: 'The most font files that a page loads',
      value: Math.max(...pages.map(({ fonts }) => fonts.length)),
      bar: `${budgets.fonts} or none`,
      met: pages.every(({ fonts }) => fonts.length <= budgets.fonts),
      command,
    },
  ];
}
