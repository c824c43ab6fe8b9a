// Gets the packages where they are not as package-lock.json says. Plain .mjs without packages.
import { spawnSync } from 'node:child_process';
import { copyFileSync, existsSync, mkdirSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { staleBecause } from './installed.mjs';

/** How npm, or the system below it, says that there is no way to the registry. */
const offline =
  /ENOTFOUND|EAI_AGAIN|EAI_FAIL|ECONNREFUSED|ECONNRESET|ENETUNREACH|EHOSTUNREACH|ETIMEDOUT|ENETDOWN/;

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
  const quiet = ['--no-audit', '--no-fund', '--loglevel=error'];
  // The cache first, and few tries: npm's own patience is minutes, in silence.
  const patience = ['--prefer-offline', '--fetch-retries=2', '--fetch-retry-maxtimeout=5000'];
  const npm = spawnSync('npm', ['ci', ...quiet, ...patience, '--fetch-retry-mintimeout=1000'], {
    cwd: aside,
    encoding: 'utf8',
    stdio: ['ignore', 'inherit', 'pipe'],
    env: { ...process.env, PATH: path },
    shell: process.platform === 'win32',
  });
  if (npm.error !== undefined) return give(`Could not run npm: ${npm.error.message}.`);
  process.stderr.write(npm.stderr);
  if (npm.status !== 0) {
    return give(
      offline.test(npm.stderr)
        ? 'The packages could not be fetched, because npm does not reach its registry. This needs the internet, once; after that it runs without.'
        : 'npm could not install the packages: its reason stands above.',
    );
  }
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
