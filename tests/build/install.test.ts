import { spawnSync } from 'node:child_process';
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { staleBecause } from '../../src/build/installed.mjs';

/** A project of one package, besides the one that brings Node. */
let root = '';
const put = (name: string, text: string, mode = 0o644) => {
  mkdirSync(dirname(join(root, name)), { recursive: true });
  writeFileSync(join(root, name), text, { mode });
};
const lock = (version: string) =>
  JSON.stringify({
    packages: {
      '': {},
      'node_modules/a': { version },
      'node_modules/other-machine': { version: '1.0.0', optional: true },
    },
  });
function installed(version: string): void {
  put(
    'node_modules/.package-lock.json',
    JSON.stringify({ packages: { 'node_modules/a': { version } } }),
  );
  put('node_modules/a/package.json', '{}');
  put('node_modules/.bin/node', '#!/bin/sh\necho v24.0.0\n', 0o755);
}
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'install-'));
  put('package-lock.json', lock('1.0.0'));
  put('package.json', '{}');
});
afterEach(() => rmSync(root, { recursive: true }));

describe('packages are used as they stand, or it is told why not', () => {
  test('all there', () => {
    installed('1.0.0');
    expect(staleBecause(root)).toBeUndefined();
  });
  test('none yet', () => expect(staleBecause(root)).toBe('nothing is installed yet'));
  test('an old one', () => {
    installed('0.9.0');
    expect(staleBecause(root)).toBe('a should be 1.0.0 and is 0.9.0');
  });
  test('a list that is cut off', () => {
    installed('1.0.0');
    put('node_modules/.package-lock.json', '{"packages": {"node_mod');
    expect(staleBecause(root)).toBe('the list of what is installed is cut off');
  });
  test('a folder that was deleted', () => {
    installed('1.0.0');
    rmSync(join(root, 'node_modules/a'), { recursive: true });
    expect(staleBecause(root)).toBe('the folder of a is gone');
  });
  test('another Node', () => {
    installed('1.0.0');
    put('node_modules/.bin/node', '#!/bin/sh\necho v20.0.0\n', 0o755);
    expect(staleBecause(root)).toBe('the package "node" has not brought Node 24');
  });
  test('a lock file that is cut off is not ours to mend', () => {
    put('package-lock.json', '{"packages"');
    expect(() => staleBecause(root)).toThrow('git checkout package-lock.json');
  });
});

/** Runs the bootstrap of that project with an npm that does what the lines say. */
function start(npm: string, env: Record<string, string> = {}) {
  for (const name of ['bootstrap', 'chromium', 'install', 'installed', 'port']) {
    cpSync(`src/build/${name}.mjs`, join(root, 'src/build', `${name}.mjs`));
  }
  put('bin/npm', `#!/bin/sh\n${npm}\n`, 0o755);
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [join(root, 'src/build/bootstrap.mjs'), 'start'],
    { encoding: 'utf8', env: { PATH: `${join(root, 'bin')}:/usr/bin:/bin`, ...env } },
  );
  return { status, says: stdout + stderr };
}
// As npm 10 does with the network unplugged, "npm ci" deleting before it looks for anything.
const noRegistry = `
case "$1" in
ping) echo "npm error code EAI_AGAIN" >&2; exit 1;;
ci) rm -rf node_modules; [ "$5" = --offline ] || sleep 300; echo "npm error code ENOTCACHED" >&2; exit 1;;
esac`;
const leftovers = () => readdirSync(root).filter((name) => name.startsWith('node_modules.'));

describe.skipIf(process.platform === 'win32')('npm start', () => {
  test('without the internet says so, and keeps what was installed', () => {
    installed('0.9.0');
    const { status, says } = start(noRegistry);
    expect(status).toBe(1);
    expect(says).toContain('a should be 1.0.0 and is 0.9.0');
    expect(says).toContain('This needs the internet, once');
    expect(says).toContain('What was installed before is still there.');
    expect(existsSync(join(root, 'node_modules/a/package.json'))).toBe(true);
    expect(leftovers()).toEqual([]);
  });

  test('without the internet takes the packages that npm has stored', () => {
    const good = mkdtempSync(join(tmpdir(), 'good-'));
    installed('1.0.0');
    cpSync(join(root, 'node_modules'), join(good, 'node_modules'), { recursive: true });
    installed('0.9.0');
    const { says } = start(`
case "$1" in
ping) echo "npm error code ENOTFOUND" >&2; exit 1;;
ci) cp -a ${good}/node_modules .;;
*) exit 1;;
esac`);
    rmSync(good, { recursive: true });
    expect(says).not.toContain('internet, once');
    expect(staleBecause(root)).toBeUndefined();
  });

  test('on a first visit without the internet promises nothing', () => {
    const { says } = start(noRegistry);
    expect(says).toContain('This needs the internet, once');
    expect(says).not.toContain('still there');
  });

  test('leaves npm its own reason where it has another one', () => {
    const { says } = start('[ "$1" = ping ] || { echo "npm error code ENOSPC" >&2; exit 1; }');
    expect(says).toContain('ENOSPC');
    expect(says).not.toContain('internet, once');
  });

  test('repairs a cut-off list and a deleted folder, without a stack trace', () => {
    const good = mkdtempSync(join(tmpdir(), 'good-'));
    installed('1.0.0');
    cpSync(join(root, 'node_modules'), join(good, 'node_modules'), { recursive: true });
    put('node_modules/.package-lock.json', '{"pack');
    rmSync(join(root, 'node_modules/a'), { recursive: true });
    // "npm run build", which comes after it, ends the start.
    const { says } = start(
      `[ "$1" != run ] || exit 1; [ "$1" != ci ] || cp -a ${good}/node_modules .`,
    );
    rmSync(good, { recursive: true });
    expect(says).toContain('the list of what is installed is cut off');
    expect(says).not.toMatch(/^ +at /m);
    expect(staleBecause(root)).toBeUndefined();
    expect(leftovers()).toEqual([]);
  });

  test('does not swap in packages that are still not right', () => {
    installed('0.9.0');
    const { says } = start('mkdir -p node_modules');
    expect(says).toContain('Packages were installed, yet nothing is installed yet');
    expect(staleBecause(root)).toBe('a should be 1.0.0 and is 0.9.0');
  });

  test('refuses a wrong PORT before it builds', () => {
    installed('1.0.0');
    const { status, says } = start('echo built', { PORT: '99999' });
    expect(status).toBe(1);
    expect(says.trim()).toBe('PORT is "99999". It must be a whole number from 0 to 65535.');
  });

  test('tells a lock file that is cut off in a sentence', () => {
    put('package-lock.json', '{"packages"');
    const { says } = start('true');
    expect(says.trim()).toMatch(/^package-lock\.json is missing or cut off\. .*"\.$/);
  });
});
