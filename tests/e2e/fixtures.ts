import { test as base, expect, type Page } from '@playwright/test';

/** How long a page may draw nothing before it is taken for stuck [ms]. */
const STUCK = 1500;

/**
 * Chromium 150 on two busy cores now and then stops drawing a page for good, one load in thirty while its islands
 * wake; script runs on, and the page draws again once it has been behind another. Nothing of ours is at fault
 * there, and no test could wait it out.
 * @returns what ends the watch
 */
function keepDrawing(page: Page): () => void {
  const look = async () => {
    const drawn = page.evaluate(() => new Promise((done) => requestAnimationFrame(done)));
    // It went on to another address meanwhile, or has been closed.
    const gone = drawn.catch(() => undefined);
    const late = new Promise<'late'>((done) => setTimeout(() => done('late'), STUCK));
    if ((await Promise.race([gone, late])) !== 'late' || page.isClosed()) return;
    const other = await page.context().newPage();
    await other.bringToFront();
    await page.bringToFront();
    await other.close();
  };
  let looking = false;
  const watch = setInterval(() => {
    if (looking || page.isClosed()) return;
    looking = true;
    const looked = () => (looking = false);
    look().then(looked, looked);
  }, 1000);
  return () => clearInterval(watch);
}

/**
 * A page that remembers what no page of ours may do: complain on the console, break the content
 * security policy, throw, miss a file, or ask anybody else for anything.
 */
export const test = base.extend<{ trouble: string[] }>({
  trouble: [
    async ({ page, baseURL }, use) => {
      const trouble: string[] = [];
      page.on('console', (message) => {
        if (message.type() === 'error' || message.type() === 'warning') {
          // Playwright's own words for `serviceWorkers: 'block'`.
          if (message.text() === 'Service Worker registration blocked by Playwright') return;
          // A page asked for that is not there is the point of one test, and no fault.
          if (/status of 404/.test(message.text()) && /no-such-page/.test(message.location().url)) {
            return;
          }
          trouble.push(`console: ${message.text()}`);
        }
      });
      page.on('pageerror', (error) => trouble.push(`error: ${error.message}`));
      page.on('requestfailed', (request) => {
        // What the test itself broke off by going on to the next page did not fail.
        const why = request.failure()?.errorText ?? '';
        if (why !== 'net::ERR_ABORTED') trouble.push(`failed: ${request.url()} ${why}`);
      });
      page.on('response', (response) => {
        if (response.status() >= 400 && !response.url().includes('no-such-page')) {
          trouble.push(`${response.status()}: ${response.url()}`);
        }
      });
      page.on('request', (request) => {
        const { protocol, origin } = new URL(request.url());
        if (protocol !== 'data:' && protocol !== 'blob:' && origin !== baseURL) {
          trouble.push(`asked elsewhere: ${request.url()}`);
        }
      });
      await page.addInitScript(() => {
        document.addEventListener('securitypolicyviolation', (event) => {
          console.error(`policy: ${event.violatedDirective} ${event.blockedURI} ${event.sample}`);
        });
      });
      const rest = keepDrawing(page);
      await use(trouble);
      rest();
      expect(trouble).toEqual([]);
    },
    { auto: true },
  ],
});
export { expect };
