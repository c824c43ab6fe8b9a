import { existsSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { BuiltPage } from './pages.ts';

/** Compressed kilobytes (1000 bytes) a page may cost. From the quality bar for a slow phone. */
export const budgets = {
  /** Everything the page loads, its one font included. */
  page: 150,
  /** JavaScript of a page that is only read. */
  reading: 33,
  /** JavaScript of a page with one simulation on it. */
  simulation: 45,
  /** And for each further one: it loads by itself, when the reader comes near it. */
  furtherSimulation: 8,
  /** JavaScript of a page of practice. */
  practice: 60,
  /**
   * Scripts are cut into files where pages share pieces, and what is compressed in two files is larger than in one: what
   * the pages of practice and of the shop cost every page with a simulation so. 0.1 is the bookmark of a lesson, which a word
   * that is looked up does not move.
   */
  cuts: 0.7,
  fonts: 1,
} as const;

/**
 * Pages over the bar, and by what they may be [kB]: two solve engagements with any fault, which is 12 kB of
 * engine, and the whole car has a drawing and a trace besides. Home carries the live circuit, two lessons solve a
 * whole curve or a drive, and one draws the pump beside its regulator. The page that meetings
 * are put together on has the forms of five kinds of scene, keeps what was typed in the moment the page goes, says in words what
 * a scene shows (0.3), takes a why for each option of a vote (0.1), and brings each meeting back that was deleted (0.1). In each 0.2 to 0.3 are the hint to compile ahead, up to 0.1 the pieces that pages of questions and meetings share with them, 0.2 are names in a chart that keep off lines and off
 * the ties of other names, and up to 0.1 are values at its cursor that keep off the other lines.
 */
const over: Readonly<Record<string, number>> = {
  '/': 2.1,
  '/lessons/cold-hot-and-air/': 1.5,
  '/lessons/holds-cold-slips-hot/': 3.5,
  '/lessons/hot-fluid-thin-fluid/': 0.1,
  '/lessons/pump-and-regulator/': 2.2,
  '/lessons/turbine-must-stop/': 8.7,
  '/lessons/two-range-selections/': 1.2,
  '/lessons/warm-to-the-complaint/': 3.5,
  '/measure/': 1.2,
  '/meetings/own/': 1.3,
  '/whole-car/': 11.5,
};

/** Bytes as a host sends them that compresses once and ahead of time. */
export const packed = (content: string | Buffer): number => gzipSync(content, { level: 9 }).length;

export interface PageCost {
  readonly address: string;
  readonly total: number;
  readonly script: number;
  readonly fonts: readonly string[];
  readonly simulations: number;
  readonly hasIsland: boolean;
}

/**
 * What must be loaded as well, by kind of file: static imports of a script, url() of a style sheet.
 * A dynamic import() is not counted: it loads what a reader asked for by pressing something. An
 * island that loads when it comes into view is counted, because nobody asked.
 */
const onward: Record<string, RegExp> = {
  '.js': /(?:from|import)\s*["'`](\.{1,2}\/[^"'`]+|\/[^"'`]+)["'`]/g,
  '.css': /url\(["']?([^"')]+)["']?\)/g,
};
const inPage =
  /(?:\b(?:src|href|component-url|renderer-url|before-hydration-url)="(\/?[^":#?]+\.(?:js|css|woff2?|svg|png|jpe?g|webp|avif|ico|json))"|url\((\/[^)]+)\))/g;

export function pageCost({ address, html }: BuiltPage, folder: string): PageCost {
  const files = new Set<string>();
  const queue = Array.from(html.matchAll(inPage), ([, attribute, inStyle]) =>
    posix.resolve(address, attribute ?? inStyle ?? ''),
  );
  for (const path of queue) {
    if (files.has(path)) continue;
    files.add(path);
    const file = join(folder, path);
    if (!existsSync(file)) {
      throw new Error(`${address} loads ${path}, which the build did not make.`);
    }
    const pattern = onward[posix.extname(path)];
    if (pattern === undefined) continue;
    for (const [, next = ''] of readFileSync(file, 'utf8').matchAll(pattern)) {
      if (!next.startsWith('data:')) queue.push(posix.resolve(posix.dirname(path), next));
    }
  }
  let total = packed(html);
  let script = inlineScript(html);
  const fonts: string[] = [];
  for (const path of files) {
    const bytes = readFileSync(join(folder, path));
    const isFont = /\.woff2?$/.test(path);
    const size = isFont ? bytes.length : packed(bytes);
    total += size;
    if (path.endsWith('.js')) script += size;
    if (isFont) fonts.push(path);
  }
  return {
    address,
    total,
    script,
    fonts,
    simulations: html.match(/<section class="sim[ "]/g)?.length ?? 0,
    hasIsland: html.includes('<astro-island'),
  };
}

function inlineScript(html: string): number {
  const text = Array.from(html.matchAll(/<script\b[^>]*>([^]*?)<\/script>/g), ([, body]) => body);
  const joined = text.join('\n');
  return joined.trim() === '' ? 0 : packed(joined);
}

const kB = (bytes: number): string => (bytes / 1000).toFixed(1);

/** What sort of page it is, how much script a page of that sort should load at most [kB], and how much this one may. */
export function scriptLimit({ address, simulations, hasIsland }: PageCost) {
  const limit = (kind: string, bar: number, beyond = 0) => ({ kind, bar, most: bar + beyond });
  if (!hasIsland) return limit('a page without a simulation', budgets.reading);
  if (address.startsWith('/practise/')) return limit('a page of practice', budgets.practice);
  const further = Math.max(0, simulations - 1);
  return limit(
    further === 0 ? 'a page with a simulation' : `a page with ${simulations} simulations`,
    budgets.simulation + further * budgets.furtherSimulation,
    budgets.cuts + (over[address] ?? 0),
  );
}

/** One sentence for each budget that the page breaks. */
export function overBudget(page: PageCost): string[] {
  const { address, total, script, fonts } = page;
  const { kind, most: scriptBudget } = scriptLimit(page);
  return [
    ...(total > budgets.page * 1000
      ? [`${address} costs ${kB(total)} kB compressed; a page may cost ${budgets.page} kB.`]
      : []),
    ...(script > scriptBudget * 1000
      ? [`${address} loads ${kB(script)} kB of JavaScript; ${kind} may load ${scriptBudget} kB.`]
      : []),
    ...(fonts.length > budgets.fonts
      ? [`${address} loads ${fonts.length} fonts (${fonts.join(', ')}); one is allowed.`]
      : []),
  ];
}
