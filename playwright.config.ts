import { availableParallelism } from 'node:os';
import { defineConfig } from '@playwright/test';
import { findChromium } from './src/build/chromium.mjs';

// Kept in the environment, because each worker reads this file anew; by process id, so that two
// checkouts on one machine do not meet.
process.env['E2E_PORT'] ??= String(20_000 + (process.pid % 20_000));
const port = Number(process.env['E2E_PORT']);
const executablePath = findChromium();

export default defineConfig({
  fullyParallel: true,
  forbidOnly: Boolean(process.env['CI']),
  // A test that passes on the second try has not passed.
  retries: 0,
  workers: Math.max(2, availableParallelism()),
  // Two cores that others share take three times as long; nothing here measures time.
  timeout: 60_000,
  // A page that has stopped drawing is set going again within three seconds (tests/e2e/fixtures.ts).
  expect: { timeout: 10_000 },
  reporter: [['list']],
  use: {
    baseURL: `http://127.0.0.1:${port}`,
    locale: 'en-US',
    // What a test sees is what the server sends; tests/walks/offline.spec.ts lets the site be stored.
    serviceWorkers: 'block',
    // Two cores that draw by themselves spend one on fluid that flows; a test of motion asks for it.
    contextOptions: { reducedMotion: 'reduce' },
    launchOptions: {
      ...(executablePath === undefined ? {} : { executablePath }),
      // Chromium's sandbox refuses to run as root; anyone else keeps it.
      args: [
        ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
        '--no-first-run',
        // Two cores that draw by themselves lose nothing by not asking for a graphics card first.
        '--disable-gpu',
      ],
    },
  },
  projects: [
    { name: 'site', testDir: 'tests/e2e', outputDir: 'test-results/site' },
    // Through every page and simulation, without the server, on paper: a part of `npm run quality`, and CI runs it.
    { name: 'walks', testDir: 'tests/walks', outputDir: 'test-results/walks' },
    // Slow proof, with its figures: `npm run quality`. Its folder of figures outlives a run of the other.
    { name: 'quality', testDir: 'tests/quality', outputDir: 'test-results/quality-runs' },
  ],
  webServer: {
    command: `node src/build/serve.ts`,
    env: { PORT: String(port) },
    url: `http://127.0.0.1:${port}/`,
    reuseExistingServer: false,
  },
});
