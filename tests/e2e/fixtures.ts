import { test as base, expect } from '@playwright/test';

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
      await use(trouble);
      expect(trouble).toEqual([]);
    },
    { auto: true },
  ],
});
export { expect };
