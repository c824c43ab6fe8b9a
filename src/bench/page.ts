import type { Page } from '@playwright/test';
import { launchChromium } from '../build/launch-chromium.ts';
import { heapMB, moves, openFreePlay } from './browser.ts';
import { percentile, timed, type Row } from './row.ts';
import { pageWith, serve } from './site.ts';

const SIM = 'clutch-pressure';
const ENGAGEMENT = 'engagement';
const SLIDERS = [
  ['temp', 'temperature'],
  ['crack', 'crack'],
  ['rpm', 'engine speed'],
] as const;
const MOVES = 120;
/** Growth of the heap that counts as none: a tenth, since caches of compiled code still fill. */
const HEAP_SLACK = 1.1;

/** Both runs of an engagement solved again and redrawn: one 60 Hz frame is the aim. */
async function measureEngagement(page: Page, address: string): Promise<readonly Row[]> {
  await openFreePlay(page, address, ENGAGEMENT, ['temp', 'pressure']);
  const rows: Row[] = [];
  for (const [key, name] of [
    ['temp', 'temperature'],
    ['severity', 'severity'],
  ] as const) {
    await moves(page, ENGAGEMENT, key, 40);
    const samples = await moves(page, ENGAGEMENT, key, MOVES);
    rows.push(
      timed(
        `engagement, ${name} moved`,
        samples.map(({ laidOut }) => laidOut),
        'ms',
        { at: 'p95', most: 16 },
      ),
    );
  }
  return rows;
}

async function measure(page: Page, address: string): Promise<readonly Row[]> {
  await openFreePlay(page, address, SIM, ['rpm', 'map']);
  const cdp = await page.context().newCDPSession(page);
  const rows: Row[] = [];
  // The first hundred moves run code that is not compiled yet.
  for (const [key] of SLIDERS) await moves(page, SIM, key, 40);
  for (const [rate, most, suffix] of [
    [1, 4, ''],
    [4, 12, ', CPU slowed 4x'],
  ] as const) {
    await cdp.send('Emulation.setCPUThrottlingRate', { rate });
    for (const [key, name] of SLIDERS) {
      const samples = await moves(page, SIM, key, MOVES);
      const all = timed(
        `${name} moved${suffix}`,
        samples.map(({ laidOut }) => laidOut),
        'ms',
        { at: 'p95', most },
      );
      const dom = percentile(
        samples.map((move) => move.dom),
        0.95,
      );
      rows.push({ ...all, measured: `${all.measured} (before layout p95 ${dom.toFixed(2)} ms)` });
    }
  }
  await cdp.send('Emulation.setCPUThrottlingRate', { rate: 1 });

  await openFreePlay(page, address, SIM, ['rpm', 'map']);
  await cdp.send('HeapProfiler.enable');
  await moves(page, SIM, 'temp', 50);
  const after50 = await heapMB(cdp);
  await moves(page, SIM, 'temp', 450);
  const after500 = await heapMB(cdp);
  rows.push({
    what: 'heap after 500 moves against after 50',
    aim: 'no growth',
    measured: `${after500.toFixed(2)} MB against ${after50.toFixed(2)} MB`,
    met: after500 <= after50 * HEAP_SLACK,
  });
  return rows;
}

const skipped = (reason: string): readonly Row[] => [
  { what: 'one slider move in Chromium, heap', aim: 'p95 4 ms, 12 ms slowed', measured: reason },
];

/** The page as built; a sentence in place of numbers where it cannot be had. */
export async function benchPage(): Promise<readonly Row[]> {
  const path = pageWith(SIM);
  if (path === undefined) {
    return skipped('not measured: no built page holds it; run "npm run build" first');
  }
  const browser = await launchChromium();
  const site = await serve();
  try {
    const page = await browser.newPage({
      viewport: { width: 390, height: 844 },
      serviceWorkers: 'block',
    });
    const rows = await measure(page, `${site.origin}${path}`);
    const engaged = pageWith(ENGAGEMENT);
    return engaged === undefined
      ? rows
      : [...rows, ...(await measureEngagement(page, `${site.origin}${engaged}`))];
  } finally {
    site.stop();
    await browser.close();
  }
}
