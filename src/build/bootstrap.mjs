// npm start and npm test on a machine that has only Node 20 or newer and npm. Everything it needs
// it gets first; everything after that runs on the Node 24 that the package `node` brings, because
// Astro 7 refuses older ones. Plain .mjs without packages, since it runs before they are there.
import { spawn, spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { findChromium } from './chromium.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const bin = join(root, 'node_modules', '.bin');
const nodeWanted = 24;
const onWindows = process.platform === 'win32';

const path = process.env.PATH ?? '';
const outside = path
  .split(delimiter)
  .filter((folder) => !folder.startsWith(join(root, 'node_modules')))
  .join(delimiter);

function fail(sentence) {
  console.error(`\n${sentence}`);
  process.exit(1);
}

function run(command, args, { env = {}, allowFailure = false } = {}) {
  const result = spawnSync(command, args, {
    cwd: root,
    stdio: ['ignore', 'inherit', 'inherit'],
    env: {
      ...process.env,
      PATH: [bin, outside].join(delimiter),
      ASTRO_TELEMETRY_DISABLED: '1',
      ...env,
    },
    shell: onWindows,
  });
  if (result.error !== undefined) fail(`Could not run ${command}: ${result.error.message}`);
  if (result.status !== 0 && !allowFailure) {
    fail(
      `Stopped: "${[command, ...args].join(' ')}" failed (exit ${result.status ?? result.signal}).`,
    );
  }
  return result.status === 0;
}

/** Why node_modules cannot be used as it stands, or undefined if it can. */
function staleBecause() {
  const installed = join(root, 'node_modules', '.package-lock.json');
  if (!existsSync(installed)) return 'nothing is installed yet';
  const have = JSON.parse(readFileSync(installed, 'utf8')).packages;
  const want = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')).packages;
  for (const [name, { version, optional, devOptional, peer }] of Object.entries(want)) {
    // Optional packages are for other machines' processors as often as for this one.
    if (name === '' || ((optional ?? devOptional ?? peer) && !(name in have))) continue;
    if (have[name]?.version !== version) {
      return `${name.replace('node_modules/', '')} should be ${version} and is ${have[name]?.version ?? 'missing'}`;
    }
  }
  const node = spawnSync(join(bin, 'node'), ['--version'], { encoding: 'utf8', shell: onWindows });
  if (!node.stdout?.startsWith(`v${nodeWanted}.`)) {
    return `the package "node" has not brought Node ${nodeWanted}`;
  }
  return undefined;
}

function install() {
  const [major] = process.versions.node.split('.').map(Number);
  if (major < 20) fail(`This needs Node 20 or newer to start with; this is ${process.version}.`);
  const why = staleBecause();
  if (why === undefined) return;
  console.log(`Installing packages (${why}). This takes about a minute.`);
  // From outside node_modules, because npm ci deletes that folder under whatever runs in it.
  run('npm', ['ci', '--no-audit', '--no-fund', '--loglevel=error'], { env: { PATH: outside } });
  const still = staleBecause();
  if (still !== undefined) {
    fail(
      `Packages were installed, yet ${still}. If npm was told to skip install scripts ` +
        '(ignore-scripts), allow the one of the package "node".',
    );
  }
}

function installChromium() {
  if (findChromium() !== undefined) return;
  const isRoot = process.getuid?.() === 0;
  if (isRoot && existsSync('/etc/debian_version')) {
    console.log('No Chromium found: installing Debian’s.');
    const env = { DEBIAN_FRONTEND: 'noninteractive' };
    const apt = (...args) => run('apt-get', ['-y', ...args], { env, allowFailure: true });
    if (apt('update') && apt('install', '--no-install-recommends', 'chromium')) {
      if (findChromium() !== undefined) return;
    }
  }
  console.log('No Chromium found: asking Playwright to fetch one.');
  if (!run('npx', ['playwright', 'install', 'chromium'], { allowFailure: true })) {
    fail(
      'The browser tests need a Chromium, and none could be had. Install one, or set CHROMIUM_PATH to one.',
    );
  }
}

const steps = [
  ['types', 'check'],
  ['lint', 'lint'],
  ['format', 'format:check'],
  ['import rules', 'imports'],
  ['unit tests', 'unit'],
  ['build, with byte budgets', 'build'],
  ['content: links, headings, words', 'content'],
  ['browser tests on the built site', 'e2e'],
];

function test() {
  install();
  installChromium();
  const began = Date.now();
  for (const [index, [title, script]] of steps.entries()) {
    const stepBegan = Date.now();
    console.log(`\n== ${index + 1} of ${steps.length}: ${title} (npm run ${script})`);
    run('npm', ['run', '--silent', script]);
    console.log(`   ${((Date.now() - stepBegan) / 1000).toFixed(0)} s`);
  }
  console.log(
    `\nAll ${steps.length} steps passed in ${((Date.now() - began) / 1000).toFixed(0)} s.`,
  );
}

function start() {
  install();
  run('npm', ['run', '--silent', 'build']);
  // Not through npm, and not waited for in one breath: then a signal to stop reaches the server.
  const server = spawn(join(bin, 'node'), ['src/build/serve.ts'], {
    cwd: root,
    stdio: 'inherit',
    shell: onWindows,
  });
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) {
    process.on(signal, () => server.kill(signal));
  }
  server.on('exit', (code) => process.exit(code ?? 0));
}

const [verb] = process.argv.slice(2);
if (verb === 'test') test();
else if (verb === 'start') start();
else fail(`bootstrap.mjs knows "start" and "test", not "${verb ?? ''}".`);
