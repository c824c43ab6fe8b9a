// Gets the packages where they are not as package-lock.json says. Plain .mjs without packages.
import { spawnSync } from 'node:child_process';
import { copyFileSync, existsSync, mkdirSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { staleBecause } from './installed.mjs';

const quiet = ['--no-audit', '--no-fund', '--loglevel=error'];

function npm(args, folder, path) {
  return spawnSync('npm', args, {
    cwd: folder,
    encoding: 'utf8',
    stdio: ['ignore', 'inherit', 'pipe'],
    env: { ...process.env, PATH: path },
    shell: process.platform === 'win32',
  });
}

/** How npm, or the system below it, says that there is no way to the registry. */
const noWay =
  /ENOTFOUND|EAI_AGAIN|EAI_FAIL|ECONNREFUSED|ECONNRESET|ENETUNREACH|EHOSTUNREACH|ETIMEDOUT|ENETDOWN|FETCH_ERROR/;

/**
 * Asked once and beforehand: without the internet npm asks again and again for each of 500 packages, and
 * gave up after five minutes. A registry that answers anything at all, also no, is there.
 */
const reachesRegistry = (folder, path) =>
  !noWay.test(
    npm(
      [
        'ping',
        '--loglevel=error',
        '--fetch-retries=1',
        '--fetch-retry-mintimeout=1000',
        '--fetch-timeout=15000',
      ],
      folder,
      path,
    ).stderr ?? '',
  );

/**
 * Installs beside node_modules and swaps, because "npm ci" begins with deleting that folder: without the
 * internet what was there would be gone, and nothing come in its place.
 * @param {string} root
 * @param {string} path where programs are, without node_modules: npm has to run from outside it
 * @returns {string | undefined} why it could not be done
 */
export function install(root, path) {
  const why = staleBecause(root);
  if (why === undefined) return undefined;
  console.log(`Installing packages (${why}). This takes about a minute and needs the internet.`);
  const had = existsSync(join(root, 'node_modules'));
  const kept = had ? ' What was installed before is still there.' : '';
  const aside = join(root, `node_modules.next-${process.pid}`);
  const give = (sentence) => {
    rmSync(aside, { recursive: true, force: true });
    return sentence + kept;
  };
  mkdirSync(aside, { recursive: true });
  for (const file of ['package.json', 'package-lock.json', '.npmrc']) {
    if (existsSync(join(root, file))) copyFileSync(join(root, file), join(aside, file));
  }
  const online = reachesRegistry(aside, path);
  // Without the internet, npm's own store may have them all, as after a deleted folder.
  const { error, status, stderr } = npm(
    ['ci', ...quiet, online ? '--prefer-offline' : '--offline'],
    aside,
    path,
  );
  if (error !== undefined) return give(`Could not run npm: ${error.message}.`);
  if (status !== 0 && !online) {
    return give(
      'npm does not reach its registry, and has not stored all packages. This needs the internet, once; after that it runs without.',
    );
  }
  process.stderr.write(stderr);
  if (status !== 0) return give('npm could not install the packages: its reason stands above.');
  const still = staleBecause(aside);
  if (still !== undefined) {
    return give(
      `Packages were installed, yet ${still}. If npm was told to skip install scripts ` +
        '(ignore-scripts), allow the one of the package "node".',
    );
  }
  if (had) renameSync(join(root, 'node_modules'), join(aside, 'before'));
  renameSync(join(aside, 'node_modules'), join(root, 'node_modules'));
  rmSync(aside, { recursive: true, force: true });
  return undefined;
}
