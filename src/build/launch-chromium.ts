import { chromium, type Browser } from '@playwright/test';
import { findChromium } from './chromium.mjs';

/** The machine's Chromium, or the one that Playwright brought. */
export function launchChromium(further: readonly string[] = []): Promise<Browser> {
  const executablePath = findChromium();
  return chromium.launch({
    ...(executablePath === undefined ? {} : { executablePath }),
    // Chromium's own sandbox cannot start for root, which is who runs in a container.
    args: [...(process.getuid?.() === 0 ? ['--no-sandbox'] : []), ...further],
  });
}
