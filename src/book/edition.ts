import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { Refusal } from './refusal.ts';
import { words } from './words.en.ts';

export interface Edition {
  readonly version: string;
  readonly date: Date;
}

/** Of the last commit, so that the same sources print the same book whenever it is made. */
function committed(): number {
  try {
    return Number(
      execFileSync('git', ['log', '-1', '--format=%ct'], { stdio: ['ignore', 'pipe', 'ignore'] }),
    );
  } catch {
    throw new Refusal(words.refuse.noDate);
  }
}

/** SOURCE_DATE_EPOCH is what builds that can be repeated agree on: https://reproducible-builds.org/specs/source-date-epoch/ */
export function edition(epoch = process.env['SOURCE_DATE_EPOCH'] ?? ''): Edition {
  if (!/^\d*$/u.test(epoch)) throw new Refusal(words.refuse.epoch({ given: epoch }));
  const seconds = epoch === '' ? committed() : Number(epoch);
  const { version } = JSON.parse(readFileSync('package.json', 'utf8')) as { version: string };
  return { version, date: new Date(seconds * 1000) };
}
