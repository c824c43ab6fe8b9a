import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { spawnSync } from 'node:child_process';
import type { Row } from '../bench/row.ts';
import { builtPages } from '../build/pages.ts';
import { benchRows, rowByRow } from './bench-rows.ts';
import type { Figure } from './form.ts';
import { CATEGORIES, judgePages } from './lighthouse.ts';
import { root } from './run.ts';

const command = 'npm run quality -- speed';

/** One page of each kind. */
const KINDS: Readonly<Record<string, string>> = {
  '/': 'home',
  '/lessons/thin-gap-open-hole/': 'a lesson',
  '/lessons/turbine-must-stop/': 'the heaviest lesson',
  '/course/': 'the course',
  '/glossary/': 'the glossary',
  '/model/': 'how the model works',
  '/search/': 'the search',
  '/practise/today/': 'today’s round',
  '/practise/rehearsal/': 'the rehearsal',
  '/practise/case/?case=fine-cold-revs-hot': 'a practice case',
  '/measure/': 'measure',
  '/measure/log/': 'the log reader',
  '/measure/jobs/': 'job sheets',
  '/measure/transmission/': 'your transmission',
  '/whole-car/': 'the whole car',
  '/proof/': 'this page',
  '/es/lessons/hot-fluid-thin-fluid/': 'a lesson in Spanish',
  '/404.html': 'the page for a wrong address',
};
const FULL = CATEGORIES.map(() => '100').join(' ');
/** The gate of our own paper on speed. */
const SHIFT = 0.01;

async function judged(): Promise<Figure[]> {
  const there = new Set(builtPages().map(({ address }) => address));
  const missing = Object.keys(KINDS).filter((one) => !there.has(one.replace(/\?.*/, '')));
  if (missing.length > 0) throw new Error(`The built site has no ${missing.join(', ')}.`);
  const all = await judgePages(Object.keys(KINDS), (address, { scores, costs }) =>
    console.log(`   ${Object.values(scores).join(' ')}  ${address}  ${costs.join(' ')}`),
  );
  const shifts = [...all.values()].map(({ shift }) => shift);
  return [
    ...[...all].map(([address, { scores, costs }]): Figure => {
      const value = Object.values(scores).join(' ');
      const met = value === FULL;
      return {
        what: `Lighthouse, ${KINDS[address] ?? address}: speed, access, good practice, being found`,
        value: met ? value : `${value} (${costs.join(', ')})`,
        bar: FULL,
        met,
        command,
      };
    }),
    {
      what: 'How far anything jumps while these pages load, at most (layout shift)',
      value: Number(Math.max(...shifts).toFixed(4)),
      bar: `${SHIFT} or less`,
      met: Math.max(...shifts) <= SHIFT,
      command,
    },
  ];
}

/** Into a folder that goes again. */
function buildTime(): Figure {
  const folder = mkdtempSync(join(tmpdir(), 'proof-site-'));
  const began = performance.now();
  const { status } = spawnSync('npm', ['run', '--silent', 'build', '--', folder], {
    cwd: root,
    stdio: 'ignore',
    shell: process.platform === 'win32',
  });
  const seconds = (performance.now() - began) / 1000;
  rmSync(folder, { recursive: true, force: true });
  return {
    what: 'Building the whole site anew, checks included',
    value: status === 0 ? `${seconds.toFixed(0)} s` : 'failed',
    bar: 'none; told so that it shows when it grows',
    met: status === 0,
    command: 'npm run build',
  };
}

/** What the last `npm run bench` of these kept: a quarter of an hour for pages, half an hour for simulations, minutes for the work. */
const keptByBench = (
  part: string,
  told: (command: string, rows: readonly Row[]) => Figure[],
): Figure[] => {
  const kept = join(root, `src/bench/${part}.json`);
  if (!existsSync(kept)) return [];
  const { command: bench, rows } = JSON.parse(readFileSync(kept, 'utf8')) as {
    command: string;
    rows: readonly Row[];
  };
  return told(bench, rows);
};
const ofEach = (things: string) => (bench: string, rows: readonly Row[]) =>
  benchRows(things, bench, rows);

export const speed = async (): Promise<Figure[]> => [
  ...(await judged()),
  ...keptByBench('pages', ofEach('Pages')),
  ...keptByBench('simulations', ofEach('Simulations')),
  ...keptByBench('work', rowByRow),
  buildTime(),
];
