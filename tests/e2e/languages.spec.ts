import { builtPages } from '../../src/build/pages.ts';
import { languages, source } from '../../src/language/languages.ts';
import { words as laterWords } from '../../src/simulation/later/words.en.ts';
import { words as shellWords } from '../../src/simulation/words.en.ts';
import { words as fluidWords } from '../../src/widgets/fluid/words.en.ts';
import { expect, test } from './fixtures.ts';

const lesson = '/lessons/hot-fluid-thin-fluid/';
const translations = Object.values(languages).filter(({ id }) => id !== source);
const addresses = new Set(builtPages().map(({ address }) => address));

test('no head names its twins by half an address, which search engines refuse', async ({
  request,
}) => {
  for (const address of addresses)
    expect(await (await request.get(address)).text(), address).not.toContain('rel="alternate"');
});

for (const { id, base, twin, dir } of translations) {
  const there = base + lesson.slice(1);

  test(`a lesson leads to itself in ${id} and back, from the heading`, async ({ page }) => {
    await page.goto(lesson);
    await expect(page.locator('html')).toHaveAttribute('lang', source);
    await page.locator('.facts').getByRole('link', { name: twin }).click();
    await expect(page).toHaveURL(new RegExp(`${there}$`));
    await expect(page.locator('html')).toHaveAttribute('lang', id);
    await expect(page.locator('html')).toHaveAttribute('dir', dir);
    await page.locator('.facts').getByRole('link', { name: languages[source].twin }).click();
    await expect(page).toHaveURL(new RegExp(`(?<!${base.slice(0, -1)})${lesson}$`));
  });

  test(`${id} has no page that is not written in it, and a link to the rest`, async ({ page }) => {
    for (const path of ['course/', 'search/', 'practise/', 'sources/', 'lessons/what-slip-is/']) {
      expect(addresses, path).not.toContain(base + path);
    }
    await page.goto(base);
    const english = page.locator(`main a[hreflang="${source}"]`);
    expect(await english.count()).toBeGreaterThan(3);
    for (const link of await english.all()) {
      expect(addresses).toContain(await link.getAttribute('href'));
    }
    await expect(page.getByRole('search')).toHaveCount(0);
  });

  test(`units switch in ${id}, and stay when the language changes`, async ({ page }) => {
    await page.goto(there);
    const number = page.locator('main .u-si', { hasText: '°C' }).first();
    await expect(number).toBeHidden();
    await page.locator('#settings .pick-si').click();
    await expect(number).toBeVisible();
    await page.goto(lesson);
    await expect(page.locator('html')).toHaveAttribute('data-units', 'si');
  });

  test(`what is done in ${id} is done in English`, async ({ page }) => {
    await page.goto(there);
    await page.locator('#lesson-done').click();
    await expect(page.locator('#lesson-is-done > span')).toBeVisible();
    await page.goto(base);
    await expect(page.locator('.path-lesson.is-done')).toHaveCount(1);
    await page.goto('/course/');
    await expect(page.locator('.path-lesson.is-done')).toHaveCount(1);
  });

  test(`the simulation of the lesson in ${id} runs once, by keyboard, in its own words`, async ({
    page,
  }) => {
    const wordsOf = async <Words>(folder: string): Promise<Words> => {
      const file = new URL(`../../src/${folder}/words.${id}.ts`, import.meta.url);
      return ((await import(file.href)) as { words: Words }).words;
    };
    const shell = await wordsOf<typeof shellWords>('simulation');
    const later = await wordsOf<typeof laterWords>('simulation/later');
    const fluid = await wordsOf<typeof fluidWords>('widgets/fluid');
    await page.goto(there);
    const sim = page.locator('.sim').first();
    await sim.scrollIntoViewIfNeeded();
    await expect(sim).toHaveAttribute('data-ready', 'true');
    await expect(sim.getByText(shell.notYet.both)).toBeVisible();
    await sim.getByRole('radio', { name: fluid.predict.options.ten.words }).press('Space');
    await sim.getByRole('radio', { name: shell.confidence.certain, exact: true }).press('Space');
    await sim.getByRole('button', { name: fluid.predict.runLabel }).press('Enter');

    await expect(sim.locator('.stage-head', { hasText: later.whatItDid })).toBeFocused();
    await expect(sim).toContainText(later.right);
    await sim.getByRole('button', { name: later.toTasks }).press('Enter');
    const first = later.task({ number: 1, of: 3 });
    await expect(sim.locator('.stage-head', { hasText: first })).toBeFocused();
    await sim.getByRole('button', { name: later.hint }).press('Enter');
    // What any simulation says in English would be among these.
    const english = [shellWords, laterWords, fluidWords].flatMap((words) =>
      JSON.stringify(words).match(/(?<=":")[^"]{5,}(?=")/g),
    );
    const seen = await sim.innerText();
    expect(english.filter((words) => words !== null && seen.includes(words))).toEqual([]);
  });
}
