// npm run build: makes the whole site beside dist/ (or the folder that it is given), checks it there, and
// only then puts it in place.
// A build that fails, is broken off or runs while a server sends dist/ takes nothing away.
import { spawnSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { languages, source } from '../language/languages.ts';
import { exists } from '../language/pages.ts';
import { folderAside } from './aside.ts';
import { checkSite } from './check-dist.ts';
import { keepGallery } from './gallery-route.ts';
import { moveSite, readBase } from './move-site.ts';
import { dist } from './pages.ts';
import { putInPlace } from './put-in-place.ts';
import { makeSearchIndex } from './search-index.ts';
import { storeOffline } from './store-offline.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

function fail(sentence: string): never {
  rmSync(aside, { recursive: true, force: true });
  console.error(`${sentence} What stood in ${site} is as it was.`);
  process.exit(1);
}

const place = readBase(process.env['SITE_BASE']);
if ('wrong' in place) {
  console.error(place.wrong);
  process.exit(1);
}
const site = resolve(process.argv[2] ?? dist);
const aside = folderAside(site);
// One build of Astro for each language that has lessons, English first: it makes the folder that the
// others go into.
for (const { id, name, base } of Object.values(languages)) {
  if (!exists(id, '/')) continue;
  const target = join(aside, base);
  const astro = spawnSync(
    join(root, 'node_modules', '.bin', 'astro'),
    ['build', '--outDir', target],
    {
      cwd: root,
      stdio: ['ignore', 'inherit', 'inherit'],
      env: { ...process.env, SITE_LANGUAGE: id, GALLERY: 'yes' },
      shell: process.platform === 'win32',
    },
  );
  if (astro.error !== undefined) fail(`Astro could not be run (${astro.error.message}).`);
  if (astro.status !== 0)
    fail(`Astro could not build the site in ${name}: the reason stands above.`);
  keepGallery(target);
  // What a translation holds so far is found at a glance on its home page.
  if (id === source) await makeSearchIndex(target, id);
}
const wrong = checkSite(aside);
if (place.base !== '/') moveSite(aside, place.base);
wrong.push(...(await storeOffline(aside)));
for (const sentence of wrong) console.error(`   ${sentence}`);
if (wrong.length > 0) {
  fail(`The build has ${wrong.length} ${wrong.length === 1 ? 'fault' : 'faults'}.`);
}
putInPlace(aside, site);
