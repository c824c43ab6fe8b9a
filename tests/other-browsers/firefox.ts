import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import puppeteer from 'puppeteer-core';
import { onPath } from '../../src/build/chromium.mjs';
import type { OpenBrowser, Seen } from './browser.ts';

/** Stock Firefox over WebDriver BiDi. Undefined where there is none. */
export async function firefox(): Promise<OpenBrowser | undefined> {
  const executablePath = onPath('firefox-esr') ?? onPath('firefox');
  if (executablePath === undefined) return undefined;
  const home = mkdtempSync(join(tmpdir(), 'firefox-'));
  const browser = await puppeteer.launch({
    browser: 'firefox',
    executablePath,
    headless: true,
    // A run is over at once; WebKit watches it move.
    extraPrefsFirefox: { 'ui.prefersReducedMotion': 1 },
    // As root it refuses a home that is not its own.
    env: { ...process.env, HOME: home },
  });
  const page = await browser.newPage();
  try {
    await page.setViewport({ width: 390, height: 664 });
  } catch (error) {
    // It is told its size and, in the same breath, which way up it is held, which Firefox 140 cannot be told.
    if (!(error as Error).message.includes('setScreenOrientationOverride')) throw error;
  }
  await page.waitForFunction('innerWidth === 390', { timeout: 20_000 });
  page.setDefaultTimeout(120_000);
  return {
    name: await browser.version(),
    async walk(url, body) {
      await page.goto(url, { waitUntil: 'load' });
      return (await page.evaluate(`(async () => { ${body} })()`)) as Seen;
    },
    async print(url) {
      await page.goto(url, { waitUntil: 'load' });
      const file = join(home, 'page.pdf');
      writeFileSync(file, await page.pdf());
      const { stdout, error } = spawnSync('pdftotext', ['-layout', file, '-'], {
        encoding: 'utf8',
      });
      if (error !== undefined) throw new Error('pdftotext is not here (package poppler-utils).');
      return stdout;
    },
    async close() {
      await browser.close();
      rmSync(home, { recursive: true, force: true });
    },
  };
}
