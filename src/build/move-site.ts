// SITE_BASE=/shop/ npm run build: the site for a folder of a host, not for its root.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { movedData, movedPage, movedScript, under } from './elsewhere.ts';
import { filesIn } from './files-in.ts';

/**
 * @returns the folder of the host, "/" without one, and the whole address where the host was named as well; a sentence where it
 *   cannot be one
 */
export function readBase(
  asked: string | undefined,
): { base: string; address?: string } | { wrong: string } {
  if (asked === undefined || asked === '') return { base: '/' };
  const [, host, base = ''] = /^(https?:\/\/[\w.-]+(?::\d+)?)?(\/.*)$/.exec(asked) ?? [];
  if (/^\/([\w.~-]+\/)*$/.test(base) && !base.includes('..'))
    return { base, ...(host !== undefined && { address: asked }) };
  return {
    wrong: `SITE_BASE is "${asked}". It is the folder of the host that the site stands in, with a slash before and after it, of letters, digits and . _ ~ -: for example /shop/, or with the host before it: https://site.example/shop/.`,
  };
}

/** Writes the base into every address of a site that was built for the root. */
export function moveSite(site: string, base: string): void {
  const place = under(base);
  for (const name of filesIn(site)) {
    const file = join(site, name);
    const change = (moved: (text: string) => string): void =>
      writeFileSync(file, moved(readFileSync(file, 'utf8')));
    if (name.endsWith('.html')) {
      const address = `/${name.replace(/index\.html$/, '')}`;
      change((html) => movedPage(html, address, place));
    } else if (/(^|\/)_astro\/[^/]+\.js$/.test(name)) {
      change((script) => movedScript(script, name.startsWith('_astro/') ? '..' : '../..', place));
    } else if (name.endsWith('.json') && !name.startsWith('pagefind/')) {
      change((json) => movedData(json, base));
    }
  }
}
