import { spawn, type ChildProcess } from 'node:child_process';
import { existsSync, globSync } from 'node:fs';
import { createServer } from 'node:net';
import type { AddressInfo } from 'node:net';
import { setTimeout as pause } from 'node:timers/promises';
import { onPath } from '../../src/build/chromium.mjs';
import type { OpenBrowser, Seen } from './browser.ts';

/** How long one page may take to be walked [ms]. */
const MOST_MS = 120_000;

/** A port that nobody has: the browser tests serve the site at the same time on one of their own. */
async function freePort(): Promise<number> {
  const server = createServer();
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  const { port } = server.address() as AddressInfo;
  await new Promise((done) => server.close(done));
  return port;
}

let driverPort = 0;

async function command(method: string, path: string, body?: object): Promise<unknown> {
  const response = await fetch(`http://127.0.0.1:${driverPort}${path}`, {
    method,
    ...(body && { body: JSON.stringify(body) }),
  });
  const { value } = (await response.json()) as { value: unknown };
  if (!response.ok) throw new Error(`${path}: ${JSON.stringify(value)}`);
  return value;
}

async function started(driver: ChildProcess): Promise<void> {
  for (let i = 0; i < 100; i += 1) {
    if (driver.exitCode !== null)
      throw new Error(`WebKitWebDriver ended with code ${driver.exitCode}.`);
    try {
      await command('GET', '/status');
      return;
    } catch {
      await pause(100);
    }
  }
  throw new Error('WebKitWebDriver did not answer within 10 s.');
}

/** WebKitGTK's own small browser over W3C WebDriver. Undefined where there is none. */
export async function webkit(): Promise<OpenBrowser | undefined> {
  const program = onPath('WebKitWebDriver');
  const screen = onPath('xvfb-run');
  const [binary] = globSync('/usr/lib/*/webkit2gtk-4.1/MiniBrowser');
  if (program === undefined || screen === undefined || !binary || !existsSync(binary)) {
    return undefined;
  }
  driverPort = await freePort();
  const display = ['-a', '-s', '-screen 0 1600x1300x24'];
  const driver = spawn(screen, [...display, program, `--port=${driverPort}`], {
    stdio: 'ignore',
    detached: true,
  });
  try {
    await started(driver);
  } catch (error) {
    console.log(`   ${String(error)}`);
    if (driver.pid !== undefined && driver.exitCode === null) process.kill(-driver.pid);
    return undefined;
  }
  const { sessionId, capabilities } = (await command('POST', '/session', {
    capabilities: {
      alwaysMatch: {
        browserName: 'MiniBrowser',
        'webkitgtk:browserOptions': { binary, args: ['--automation'] },
      },
    },
  })) as { sessionId: string; capabilities: { browserVersion?: string } };
  const session = `/session/${sessionId}`;
  await command('POST', `${session}/timeouts`, { script: MOST_MS, pageLoad: MOST_MS });
  await command('POST', `${session}/window/rect`, { width: 480, height: 900 });
  return {
    name: `WebKitGTK ${capabilities.browserVersion ?? ''}`.trim(),
    async walk(url, body) {
      await command('POST', `${session}/url`, { url });
      // On a busy machine it says that it is there while the page before still stands.
      const where = () =>
        command('POST', `${session}/execute/sync`, { script: 'return location.href', args: [] });
      const end = Date.now() + MOST_MS;
      while ((await where()) !== url) {
        if (Date.now() > end) throw new Error(`WebKit never came to ${url}.`);
        await new Promise((done) => setTimeout(done, 50));
      }
      const done = `const tell = arguments[0];
        (async () => { ${body} })().then(tell, (error) => tell({ title: document.title, simulations: [], trouble: [String(error)] }));`;
      return (await command('POST', `${session}/execute/async`, {
        script: done,
        args: [],
      })) as Seen;
    },
    async close() {
      await command('DELETE', session).catch(() => undefined);
      // The whole group: xvfb-run, its screen and the driver.
      if (driver.pid !== undefined) process.kill(-driver.pid);
    },
  };
}
