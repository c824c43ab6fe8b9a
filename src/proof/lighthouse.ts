/** Lighthouse on each kind of page, as its own preset has a phone: CPU four times slower, slow 4G, worked out from what was seen. */
import { createServer } from 'node:net';
import lighthouse from 'lighthouse';
import { serve } from '../bench/site.ts';
import { launchChromium } from '../build/launch-chromium.ts';
import { percentile } from '../bench/row.ts';

export const CATEGORIES = ['performance', 'accessibility', 'best-practices', 'seo'] as const;
type Category = (typeof CATEGORIES)[number];
/** Its speed differs from run to run; the middle one counts. */
const RUNS = 3;

export interface Judged {
  readonly scores: Readonly<Record<Category, number>>;
  readonly shift: number;
  /** What cost points, by the ids of Lighthouse. */
  readonly costs: readonly string[];
}

const freePort = (): Promise<number> =>
  new Promise((done) => {
    const server = createServer().listen(0, '127.0.0.1', () => {
      const address = server.address();
      const port = typeof address === 'object' && address !== null ? address.port : 0;
      server.close(() => done(port));
    });
  });

async function judge(url: string, port: number): Promise<Judged> {
  const result = await lighthouse(url, {
    port,
    output: 'json',
    logLevel: 'error',
    onlyCategories: [...CATEGORIES],
  });
  if (result === undefined) throw new Error(`Lighthouse gave no answer for ${url}.`);
  const { categories, audits, runtimeError } = result.lhr;
  if (runtimeError !== undefined) throw new Error(`${url}: ${runtimeError.message}`);
  const scored = CATEGORIES.map(
    (name) => [name, Math.round(100 * (categories[name]?.score ?? 0))] as const,
  );
  const costs = CATEGORIES.flatMap((name) =>
    (categories[name]?.auditRefs ?? [])
      .filter(
        ({ id, weight }) =>
          weight > 0 && (audits[id]?.score ?? 1) < (name === 'performance' ? 0.9 : 1),
      )
      .map(({ id }) => id),
  );
  return {
    scores: Object.fromEntries(scored) as Record<Category, number>,
    shift: audits['cumulative-layout-shift']?.numericValue ?? 0,
    costs,
  };
}

/** Each address of the built site, judged; `told` hears of each as it comes. */
export async function judgePages(
  addresses: readonly string[],
  told: (address: string, judged: Judged) => void,
  runs = RUNS,
): Promise<ReadonlyMap<string, Judged>> {
  const port = await freePort();
  const browser = await launchChromium([`--remote-debugging-port=${port}`]);
  const site = await serve();
  const all = new Map<string, Judged>();
  try {
    for (const address of addresses) {
      const seen: Judged[] = [];
      for (let run = 0; run < runs; run += 1) seen.push(await judge(site.origin + address, port));
      const middle = (name: Category): number =>
        percentile(
          seen.map(({ scores }) => scores[name]),
          0.5,
        );
      const judged: Judged = {
        scores: Object.fromEntries(CATEGORIES.map((name) => [name, middle(name)])) as Record<
          Category,
          number
        >,
        shift: Math.max(...seen.map(({ shift }) => shift)),
        costs: [...new Set(seen.flatMap(({ costs }) => costs))],
      };
      all.set(address, judged);
      told(address, judged);
    }
  } finally {
    site.stop();
    await browser.close();
  }
  return all;
}
