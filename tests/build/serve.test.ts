import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, type Server } from 'node:net';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readPort } from '../../src/build/port.mjs';

let site = '';
let other: Server;
beforeAll(async () => {
  site = mkdtempSync(join(tmpdir(), 'site-'));
  writeFileSync(join(site, 'index.html'), 'home');
  other = createServer().listen(0, '127.0.0.1');
  await new Promise((resolve) => other.once('listening', resolve));
});
afterAll(() => {
  other.close();
  rmSync(site, { recursive: true });
});

/** What the server says to a wrong setting. It stops by itself, or the test fails. */
function says(env: Record<string, string>, folder = site): string {
  const { status, stdout, stderr } = spawnSync(process.execPath, ['src/build/serve.ts', folder], {
    encoding: 'utf8',
    env: { ...process.env, ...env },
    timeout: 20_000,
  });
  expect(stdout).toBe('');
  expect(status).toBe(1);
  return stderr;
}

test.each(['99999', 'abc', '-1', '80.5', '0x50', ' 80', '1e3'])('PORT=%s is refused', (text) => {
  expect(readPort(text)).toEqual({
    wrong: `PORT is "${text}". It must be a whole number from 0 to 65535.`,
  });
});
test.each([
  [undefined, {}],
  ['', {}],
  ['0', { port: 0 }],
  ['65535', { port: 65_535 }],
])('PORT=%s is read', (text, port) => expect(readPort(text)).toEqual(port));

describe('what cannot be served is told in one sentence', () => {
  test('a wrong port', () => {
    expect(says({ PORT: '99999' })).toBe(
      'PORT is "99999". It must be a whole number from 0 to 65535.\n',
    );
  });
  test('a taken one', () => {
    const { port } = other.address() as AddressInfo;
    expect(says({ PORT: String(port) })).toBe(
      `Port ${port} is taken. Set PORT to a free one, or leave it out to get the first free one.\n`,
    );
  });
  test('an address that is not this machine’s', () => {
    // 192.0.2.0/24 is kept for examples (RFC 5737), so no machine has it.
    expect(says({ PORT: '0', HOST: '192.0.2.1' })).toMatch(
      /^HOST is "192\.0\.2\.1", and this machine has no such address\..*\n$/,
    );
  });
  test('a folder without a site', () => {
    expect(says({ PORT: '0' }, join(site, 'nowhere'))).toMatch(/^There is no built site in .*\n$/);
  });
}, 60_000);
