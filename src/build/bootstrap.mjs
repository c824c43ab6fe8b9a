// npm start and npm test on a machine that has only Node 20 or newer and npm. Everything it needs
// it gets first; everything after that runs on the Node 24 that the package `node` brings, because
// Astro 7 refuses older ones. Plain .mjs without packages, since it runs before they are there.
import { spawn, spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { findChromium, onPath } from './chromium.mjs';
import { install } from './install.mjs';
import { readPort } from './port.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const bin = join(root, 'node_modules', '.bin');
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

/** For what runs inside: the Node and the programs of the packages first. */
const environment = {
  ...process.env,
  PATH: [bin, outside].join(delimiter),
  ASTRO_TELEMETRY_DISABLED: '1',
  // Some forty programs are started here, most of them from the same files: compiled once, not each time.
  NODE_COMPILE_CACHE: join(root, 'node_modules', '.cache', 'compile'),
};

function run(command, args, { env = {}, allowFailure = false } = {}) {
  const result = spawnSync(command, args, {
    cwd: root,
    stdio: ['ignore', 'inherit', 'inherit'],
    env: { ...environment, ...env },
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

function installPackages() {
  const [major] = process.versions.node.split('.').map(Number);
  if (major < 20) fail(`This needs Node 20 or newer to start with; this is ${process.version}.`);
  const why = install(root, outside);
  if (why !== undefined) fail(why);
}

function installChromium() {
  if (findChromium() !== undefined) return;
  const isRoot = process.getuid?.() === 0;
  if (isRoot && existsSync('/etc/debian_version')) {
    console.log('No Chromium found: installing Debian’s.');
    const env = { DEBIAN_FRONTEND: 'noninteractive' };
    const apt = (...args) => run('apt-get', ['-qy', ...args], { env, allowFailure: true });
    const install = (name) => apt('install', '--no-install-recommends', name);
    // An older Debian has only the one with windows.
    if (apt('update') && (install('chromium-headless-shell') || install('chromium'))) {
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

/**
 * Firefox and WebKit, for the last step. They come while the others run; where they cannot be had, that
 * step says so and passes.
 * @returns {Promise<void>} when they are here, or are known not to come
 */
function installOthers() {
  const all = ['firefox-esr', 'WebKitWebDriver', 'xvfb-run', 'pdftotext'];
  const isRoot = process.getuid?.() === 0;
  if (all.every(onPath) || !isRoot || !existsSync('/etc/debian_version')) return Promise.resolve();
  console.log('Debian’s Firefox and WebKit are fetched meanwhile.');
  const packages = 'firefox-esr webkit2gtk-driver xvfb xauth poppler-utils';
  const apt = spawn(
    'sh',
    ['-c', `apt-get -qy update && apt-get -qy install --no-install-recommends ${packages}`],
    { stdio: 'ignore', env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } },
  );
  return new Promise((done) => {
    apt.on('error', () => done());
    apt.on('exit', () => done());
  });
}

/**
 * What `npm test` runs, in order. The lanes of one step run side by side, each from left to right: a
 * machine has two cores, and half of these use one.
 * @type {{ title: string, lanes: string[][] }[]}
 */
const steps = [
  {
    // Lint reads the types of the content, which the check makes.
    title: 'types and lint; format, import rules, what nothing uses',
    lanes: [
      ['check', 'lint'],
      ['format:check', 'imports', 'unused'],
    ],
  },
  { title: 'unit tests', lanes: [['unit']] },
  { title: 'build, with byte budgets', lanes: [['build']] },
  {
    // One core each.
    title: 'content: links, headings, words; every page and simulation in Firefox and WebKit',
    lanes: [['other-browsers'], ['content']],
  },
  // By itself: browsers on two cores make each other late, and a test with them. The walks are in npm run quality.
  { title: 'browser tests on the built site', lanes: [['e2e']] },
];

const seconds = (since) => `${((Date.now() - since) / 1000).toFixed(0)} s`;

/** One script; `aside` keeps what it says until it has ended. False if it failed. */
function runScript(script, aside) {
  const began = Date.now();
  const child = spawn('npm', ['run', '--silent', script], {
    cwd: root,
    stdio: ['ignore', aside ? 'pipe' : 'inherit', aside ? 'pipe' : 'inherit'],
    env: environment,
    shell: onWindows,
  });
  const said = [];
  child.stdout?.on('data', (piece) => said.push(piece));
  child.stderr?.on('data', (piece) => said.push(piece));
  return new Promise((done) => {
    const end = (code) => {
      process.stdout.write(Buffer.concat(said));
      console.log(`   npm run ${script}: ${code === 0 ? '' : 'FAILED after '}${seconds(began)}`);
      done(code === 0);
    };
    child.on('error', () => end(1));
    child.on('close', end);
  });
}

async function test() {
  installPackages();
  installChromium();
  const others = installOthers();
  const began = Date.now();
  for (const [index, { title, lanes }] of steps.entries()) {
    console.log(`\n== ${index + 1} of ${steps.length}: ${title}`);
    const lane = async (scripts, which) => {
      for (const script of scripts) {
        if (script === 'other-browsers') await others;
        if (!(await runScript(script, which > 0))) return script;
      }
      return undefined;
    };
    const failed = (await Promise.all(lanes.map(lane))).filter((script) => script !== undefined);
    if (failed.length > 0)
      fail(`Stopped: ${failed.map((one) => `"npm run ${one}"`).join(' and ')} failed.`);
  }
  console.log(`\nAll ${steps.length} steps passed in ${seconds(began)}.`);
}

function start() {
  const { wrong } = readPort(process.env.PORT);
  if (wrong !== undefined) fail(wrong);
  installPackages();
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
try {
  if (verb === 'test') await test();
  else if (verb === 'start') start();
  else fail(`bootstrap.mjs knows "start" and "test", not "${verb ?? ''}".`);
} catch (error) {
  // Every error thrown below is a sentence: a wrong CHROMIUM_PATH, a lock file that is cut off.
  fail(error.message);
}
