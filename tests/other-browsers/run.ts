/**
 * Opens every page of the built site in Firefox and in WebKit, runs every simulation once, holds a meeting and takes the server away. Chromium
 * runs the whole of tests/e2e; this finds what only another browser does. Where one cannot be had it
 * says so and passes.
 */
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { plannedMeetings } from '../../src/lessons/meetings.ts';
import { hashOf, stepsOf } from '../../src/meeting/steps.ts';
import { builtPages, dist, simulationsIn } from '../../src/build/pages.ts';
import { siteServer } from '../../src/build/site-server.ts';
import { ownServer } from '../walks/own-server.ts';
import type { OpenBrowser, Seen } from './browser.ts';
import { firefox } from './firefox.ts';
import { webkit } from './webkit.ts';

const beside = (name: string): string => readFileSync(new URL(name, import.meta.url), 'utf8');
/** The body of a function that runs in a page: what it has at hand, and the call. */
const bodyOf = (script: string, call: string): string =>
  `${beside('until.js')}; ${beside(script)}; return ${call};`;

/** A copy of the site, each page with the probe before all else. */
function probed(): string {
  const folder = mkdtempSync(join(tmpdir(), 'site-'));
  cpSync(dist, folder, { recursive: true });
  writeFileSync(join(folder, 'probe.js'), beside('probe.js'));
  for (const { address, html } of builtPages(folder)) {
    const file = join(folder, address.endsWith('/') ? `${address}index.html` : address);
    writeFileSync(file, html.replace('<head>', '<head><script src="/probe.js"></script>'));
  }
  return folder;
}

const walkBody = bodyOf('walk.js', 'walk()');
const pages = builtPages();
const simulations = pages.flatMap(({ html }) => simulationsIn(html));
/** A lesson whose printed chart must have its axis titles. */
const PRINTED = '/lessons/holds-cold-slips-hot/';
const JOBS = '/measure/jobs/';
const AXIS_TITLES = ['Fluid temperature, °F', 'Clutch pressure, psi'];

async function walkAll(browser: OpenBrowser, origin: string): Promise<readonly string[]> {
  const trouble: string[] = [];
  const ran: string[] = [];
  for (const { address } of pages) {
    const seen = await browser.walk(origin + address, walkBody);
    ran.push(...seen.simulations);
    trouble.push(...seen.trouble.map((sentence) => `${address}: ${sentence}`));
  }
  const missing = simulations.filter((id) => !ran.includes(id));
  if (missing.length > 0) trouble.push(`not run: ${missing.join(', ')}`);
  if (browser.print) {
    const paper = await browser.print(origin + PRINTED);
    for (const title of AXIS_TITLES) {
      if (!paper.includes(title)) trouble.push(`${PRINTED} on paper lacks "${title}".`);
    }
  }
  console.log(`   ${browser.name}: ${pages.length} pages, ${ran.length} simulations run`);
  return trouble;
}

/** All of them with the word `meetings` behind the command; they differ in what they say and not in how they run. */
const meetings = plannedMeetings().slice(0, process.argv.includes('meetings') ? undefined : 1);

/** A meeting to its end, and a job that is deleted as its page goes. */
async function walkWork(browser: OpenBrowser, origin: string): Promise<readonly string[]> {
  const trouble: string[] = [];
  const tell = (address: string, seen: Seen): void => {
    trouble.push(...seen.trouble.map((sentence) => `${address}: ${sentence}`));
  };
  for (const { id, scenes } of meetings) {
    const steps = scenes.flatMap((one, scene) =>
      stepsOf(one).map((kind, step) => ({ hash: hashOf({ scene, step }), step: kind })),
    );
    const address = `/meetings/${id}/`;
    const body = bodyOf('meeting.js', `walkMeeting(${JSON.stringify(steps)})`);
    tell(address, await browser.walk(origin + address, body));
  }
  for (const half of ['begin', 'end']) {
    const body = bodyOf('leaving.js', `leaving.${half}()`);
    tell(JOBS, await browser.walk(origin + JOBS, body));
  }
  console.log(`   ${browser.name}: ${meetings.length} of the meetings held`);
  return trouble;
}

/** Pages of each kind, with a simulation, a store and a table of a worker. */
const OFFLINE = ['/', PRINTED, '/whole-car/', JOBS, '/practise/today/'];

/** After one visit the server is gone, and these pages come all the same, with what they do. */
async function walkOffline(browser: OpenBrowser): Promise<readonly string[]> {
  // The search is half of its files, and Chromium's tests have it.
  const own = await ownServer({ without: ['pagefind'] });
  try {
    const stored = bodyOf('offline.js', 'untilStored()');
    const { title: state } = await browser.walk(`${own.origin}/offline/`, stored);
    if (state !== 'ready') return [`/offline/ says "${state}" and not "ready".`];
    await own.kill();
    const trouble: string[] = [];
    for (const address of OFFLINE) {
      const seen = await browser.walk(own.origin + address, `window.trouble = []; ${walkBody}`);
      trouble.push(
        ...seen.trouble.map((sentence) => `${address} with the server gone: ${sentence}`),
      );
    }
    console.log(`   ${browser.name}: ${OFFLINE.length} pages with the server gone`);
    return trouble;
  } finally {
    await own.end();
  }
}

const folder = probed();
const server = createServer(siteServer(folder));
await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
const origin = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
const found: string[] = [];
try {
  const kinds = [
    ['Firefox', firefox, 'firefox-esr poppler-utils'],
    ['WebKit', webkit, 'webkit2gtk-driver xvfb xauth'],
  ] as const;
  // Side by side: most of the time either waits for a picture to move.
  await Promise.all(
    kinds.map(async ([name, open, packages]) => {
      const browser = await open();
      if (browser === undefined) {
        console.log(
          `   NOT TRIED: ${name} is not on this machine, or does not start. On Debian: apt-get install ${packages}`,
        );
        return;
      }
      try {
        for (const walk of [walkAll, walkWork, walkOffline])
          found.push(...(await walk(browser, origin)).map((sentence) => `${name}, ${sentence}`));
      } finally {
        await browser.close();
      }
    }),
  );
} finally {
  server.close();
  rmSync(folder, { recursive: true, force: true });
}
for (const sentence of found) console.error(`   ${sentence}`);
process.exit(found.length > 0 ? 1 : 0);
