import { spawnSync } from 'node:child_process';
import { availableParallelism, cpus, totalmem } from 'node:os';
import { findChromium } from '../build/chromium.mjs';

/** What a figure was measured on, so that nobody holds a slow machine against it. */
export function machine(): string {
  const [cpu] = cpus();
  const chromium = findChromium();
  const browser =
    chromium === undefined
      ? ''
      : spawnSync(chromium, ['--version', '--no-sandbox'], { encoding: 'utf8' }).stdout.trim();
  return [
    cpu?.model.trim() ?? 'unknown processor',
    `${availableParallelism()} cores`,
    `${Math.round(totalmem() / 1e9)} GB`,
    `Node ${process.version}`,
    ...(browser === '' ? [] : [browser]),
  ].join(', ');
}
