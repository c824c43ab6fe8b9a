/** The browser tests that go through every page and simulation, the site without its server, and print: too slow for each change. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Figure } from './form.ts';
import { run } from './run.ts';

interface Report {
  readonly stats: Readonly<Record<'expected' | 'unexpected' | 'flaky' | 'skipped', number>>;
}

export function walks(): Figure[] {
  const folder = mkdtempSync(join(tmpdir(), 'walks-'));
  const report = join(folder, 'report.json');
  process.env['PLAYWRIGHT_JSON_OUTPUT_NAME'] = report;
  const { status } = run('playwright', ['test', '--project=walks', '--reporter=list,json']);
  const { stats } = JSON.parse(readFileSync(report, 'utf8')) as Report;
  rmSync(folder, { recursive: true });
  const all = stats.expected + stats.unexpected + stats.flaky + stats.skipped;
  return [
    {
      what: 'Walks through the built site that came to a good end',
      value: `${stats.expected} of ${all}`,
      bar: 'all',
      met: status === 0 && stats.expected === all,
      command: 'npm run quality -- walks',
    },
  ];
}
