// A dozen drawings and charts of the gallery, as they look from far off. What a number or a sentence test does not see is
// a part that went missing, lies astray or lost its fill. When a picture is changed on purpose, look at it at /gallery/
// and write the thumbnails anew: `GALLERY_WRITE=yes npx playwright test gallery`.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { keptGallery } from '../../src/build/gallery-route.ts';
import { expect, test } from '../e2e/fixtures.ts';
import { apart, thumbnail } from './thumbnail.ts';

const KEPT = join(import.meta.dirname, 'gallery-thumbnails.json');
const SHOWN = [
  'circuit-cold-whole',
  'circuit-hot-split',
  'whole-car-holds',
  'whole-car-parked',
  'mechanical-P',
  'electronic-D',
  'electronic-gave-up',
  'park-half',
  'converter',
  'clutch-on',
  'rings-worn',
  'lesson-pump-regulator',
  'line-names-close',
  'line-events',
  'budget',
];
/** A field is some 800 pixels: another build of the font rasterizer moves it by 2 or 3 greys, a missing part by 20 and more. */
const ONE_FIELD = 14;
const ALL_FIELDS = 1.5;

test('the drawings and charts look as they did', async ({ page }) => {
  await page.setViewportSize({ width: 900, height: 900 });
  await page.emulateMedia({ colorScheme: 'light' });
  await page.route('**/gallery/', (route) =>
    route.fulfill({ path: join(keptGallery, 'index.html'), contentType: 'text/html' }),
  );
  await page.goto('/gallery/');
  await page.evaluate(() => document.fonts.ready);
  const now: Record<string, readonly string[]> = {};
  for (const id of SHOWN) now[id] = await thumbnail(page.locator(`#shown-${id}`));
  if (process.env['GALLERY_WRITE'] === 'yes') {
    writeFileSync(KEPT, `${JSON.stringify(now, null, 2)}\n`);
    return;
  }
  const kept = JSON.parse(readFileSync(KEPT, 'utf8')) as Record<string, readonly string[]>;
  expect(Object.keys(kept).toSorted()).toEqual(SHOWN.toSorted());
  const changed = SHOWN.flatMap((id) => {
    const [one, all] = apart(now[id] ?? [], kept[id] ?? []);
    return one > ONE_FIELD || all > ALL_FIELDS
      ? [`${id}: one field by ${one}, all by ${all.toFixed(1)}`]
      : [];
  });
  expect(changed).toEqual([]);
});

test('a part that is missing shows in a thumbnail', async ({ page }) => {
  await page.setContent(
    '<svg id="a" width="480" height="320"><rect width="480" height="320" fill="#fff"/><rect x="200" y="100" width="60" height="60" fill="#333"/></svg>',
  );
  const whole = await thumbnail(page.locator('#a'));
  await page
    .locator('rect')
    .last()
    .evaluate((part) => part.remove());
  const [one] = apart(whole, await thumbnail(page.locator('#a')));
  expect(one).toBeGreaterThan(ONE_FIELD);
});
