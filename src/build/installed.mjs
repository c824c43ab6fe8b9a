// Whether node_modules can be used as it stands. Plain .mjs without packages, since it runs on Node 20
// before they are there.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** Astro 7 refuses older ones; the package `node` brings it. */
const nodeWanted = 24;

/** @returns {Record<string, { version?: string, optional?: boolean, devOptional?: boolean, peer?: boolean }> | undefined} */
function packagesOf(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8')).packages;
  } catch {
    return undefined;
  }
}

/**
 * Why the packages below a folder are not those of its package-lock.json, or undefined where they are.
 * Packages are looked for by folder: looking into each of 500 would cost a second at every start.
 * @param {string} root
 * @returns {string | undefined}
 */
export function staleBecause(root) {
  const want = packagesOf(join(root, 'package-lock.json'));
  if (want === undefined) {
    throw new Error(
      'package-lock.json is missing or cut off. Get it back with "git checkout package-lock.json".',
    );
  }
  const list = join(root, 'node_modules', '.package-lock.json');
  if (!existsSync(list)) return 'nothing is installed yet';
  const have = packagesOf(list);
  if (have === undefined) return 'the list of what is installed is cut off';
  for (const [path, { version, optional, devOptional, peer }] of Object.entries(want)) {
    // Optional packages are for other machines' processors as often as for this one.
    if (path === '' || ((optional ?? devOptional ?? peer) && !(path in have))) continue;
    const name = path.replace('node_modules/', '');
    const there = have[path]?.version;
    if (there !== version) return `${name} should be ${version} and is ${there ?? 'missing'}`;
    if (!existsSync(join(root, path, 'package.json'))) return `the folder of ${name} is gone`;
  }
  const node = spawnSync(join(root, 'node_modules', '.bin', 'node'), ['--version'], {
    encoding: 'utf8',
    shell: process.platform === 'win32',
  });
  if (!node.stdout?.startsWith(`v${nodeWanted}.`)) {
    return `the package "node" has not brought Node ${nodeWanted}`;
  }
  return undefined;
}
