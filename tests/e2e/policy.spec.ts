import { expect, test } from './fixtures.ts';

for (const address of ['/', '/lessons/what-slip-is/', '/search/']) {
  test(`text does not become markup or script on ${address}`, async ({ page, trouble }) => {
    await page.goto(address);
    const thrown = await page.evaluate(() => {
      const tries: Record<string, () => unknown> = {
        markup: () => (document.createElement('p').innerHTML = '<b>x</b>'),
        source: () => (document.createElement('script').src = '/icon.svg'),
        worker: () => new Worker('/icon.svg'),
        code: () => document.createElement('div').setAttribute('onclick', 'x()'),
      };
      return Object.entries(tries)
        .filter(([, run]) => {
          try {
            run();
            return false;
          } catch {
            return true;
          }
        })
        .map(([name]) => name);
    });
    expect(thrown).toEqual(['markup', 'source', 'worker', 'code']);
    trouble.length = 0;
  });
}

test('an inline script does not run, however it came into the page', async ({ page, trouble }) => {
  // As if the server had sent it: then no script of ours put it there, and only the hashes stop it.
  await page.route('/course/', async (route) => {
    const response = await route.fetch();
    const planted =
      '<script>document.documentElement.dataset.pwned = ""</script>' +
      '<img src="/icon.svg" onload="document.documentElement.dataset.pwned = 1">';
    const body = (await response.text()).replace('</main>', `${planted}</main>`);
    await route.fulfill({ response, body });
  });
  await page.goto('/course/');
  await expect(page.locator('main img')).toBeVisible();
  await expect
    .poll(() => trouble.filter((line) => line.startsWith('console: policy: script-src')).length)
    .toBe(2);
  await expect(page.locator('html')).not.toHaveAttribute('data-pwned');
  trouble.length = 0;
});

test('no page is shown in the frame of another', async ({ page, trouble }) => {
  await page.goto('/');
  await page.evaluate(() => {
    const frame = document.createElement('iframe');
    frame.src = '/course/';
    document.body.append(frame);
  });
  await expect.poll(() => trouble.join()).toMatch(/fram/i);
  trouble.length = 0;
});
