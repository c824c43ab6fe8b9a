// SITE_BASE=/shop/ npm run build: the site for a folder of a host, not for its root.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { movedData, movedPage, movedScript, under } from './elsewhere.ts';
import { filesIn } from './put-in-place.ts';

/** @returns the base as it was asked for, "/" without one; a sentence where it cannot be one */
export function readBase(asked: string | undefined): { base: string } | { wrong: string } {
  if (asked === undefined || asked === '') return { base: '/' };
  if (/^\/([\w.~-]+\/)*$/.test(asked) && !asked.includes('..')) return { base: asked };
  return {
    wrong: `SITE_BASE is "${asked}". It is the folder of the host that the site stands in, with a slash before and after it, of letters, digits and . _ ~ -: for example /shop/.`,
  };
}

/** Writes the base into every address of a site that was built for the root. */
export function moveSite(site: string, base: string): void {
  const place = under(base);
  for (const name of filesIn(site)) {
    const file = join(site, name);
    const path = name.replaceAll('\\', '/');
    const change = (moved: (text: string) => string): void =>
      writeFileSync(file, moved(readFileSync(file, 'utf8')));
    if (path.endsWith('.html')) {
      const address = `/${path.replace(/index\.html$/, '')}`;
      change((html) => movedPage(html, address, place));
    } else if (/(^|\/)_astro\/[^/]+\.js$/.test(path)) {
      change((script) => movedScript(script, path.startsWith('_astro/') ? '..' : '../..', place));
    } else if (path.endsWith('.json') && !path.startsWith('pagefind/')) {
      change((json) => movedData(json, base));
    }
  }
}
