/** The browser tests that go through every page and simulation, the site without its server, print, and a build of its own: too slow for each change. */
import type { Figure } from './form.ts';
import { reportOf, run } from './run.ts';

interface Report {
  readonly stats: Readonly<Record<'expected' | 'unexpected' | 'flaky' | 'skipped', number>>;
}

export function walks(): Figure[] {
  const { status, report } = reportOf((file) => {
    process.env['PLAYWRIGHT_JSON_OUTPUT_NAME'] = file;
    return run('playwright', ['test', '--project=walks', '--reporter=list,json']);
  });
  const { stats } = report as Report;
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
