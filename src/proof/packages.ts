import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { dist } from '../build/pages.ts';
import type { Figure } from './form.ts';
import { audited, lockFaults, type Lock } from './lock.ts';
import { root } from './run.ts';
import { shippedLicences, strangeLicences } from './licences.ts';

const command = 'npm run quality -- packages';
const read = (file: string): string => readFileSync(join(root, file), 'utf8');

/** What others made: the licences of what is sent to visitors, and what the lock file holds every package to. */
export function packages(): Figure[] {
  const notices = join(dist, 'third-party-notices.txt');
  if (!existsSync(notices)) throw new Error('There is no built site. Run "npm run build" first.');
  const shipped = shippedLicences(readFileSync(notices, 'utf8'));
  const kinds = [...new Set(shipped.map(({ licence }) => licence))].toSorted();
  const strange = strangeLicences(shipped);
  const lock = JSON.parse(read('package-lock.json')) as Lock;
  const { allowScripts } = JSON.parse(read('package.json')) as {
    allowScripts: Readonly<Record<string, boolean>>;
  };
  const faults = lockFaults(lock, allowScripts);
  const count = Object.keys(lock.packages).length - 1;
  const row = (what: string, value: string | number, bar: string, met: boolean): Figure => ({
    what,
    value,
    bar,
    met,
    command,
  });
  const audit = audited();
  return [
    row(
      'Packages sent to visitors under a license that is not on our list',
      strange.length === 0 ? `0 of ${shipped.length} (${kinds.join(', ')})` : strange.join(' '),
      '0',
      strange.length === 0,
    ),
    row(
      'Packages that make and test the site, without a SHA-512 sum in the lock file',
      `${faults.withoutSum.length} of ${count.toLocaleString('en-US')}`,
      '0',
      faults.withoutSum.length === 0,
    ),
    row(
      'Packages that come from anywhere but the npm registry',
      faults.fromElsewhere.length,
      '0',
      faults.fromElsewhere.length === 0,
    ),
    row(
      'Packages that may run a program of theirs when they are installed, and nobody has looked at it',
      faults.running.length === 0
        ? `0 (allowed: ${faults.allowed.join(', ')})`
        : faults.running.join(', '),
      '0',
      faults.running.length === 0,
    ),
    row(
      'The registry can be asked about known holes (npm audit)',
      'why' in audit ? `no: ${audit.why}` : 'yes',
      'yes',
      'holes' in audit,
    ),
    ...('holes' in audit
      ? [row('Known holes in packages', audit.holes, '0', audit.holes === 0)]
      : []),
  ];
}
