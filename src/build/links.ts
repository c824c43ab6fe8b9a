import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { BuiltPage } from './pages.ts';

const ids = (html: string): string[] =>
  Array.from(html.matchAll(/<[a-z][^>]*?\sid="([^"]+)"/g), ([, id = '']) => id);

/** One sentence for each link inside the site that leads nowhere, and each id given twice. */
export function brokenLinks(pages: readonly BuiltPage[], folder: string): string[] {
  const anchors = new Map(pages.map(({ address, html }) => [address, ids(html)]));
  const wrong: string[] = [];
  for (const { address, html } of pages) {
    const seen = new Set<string>();
    for (const id of anchors.get(address) ?? []) {
      if (seen.has(id)) wrong.push(`${address} has the id "${id}" twice.`);
      seen.add(id);
    }
    for (const [, href = ''] of html.matchAll(/<a\b[^>]*?\shref="([^"]*)"/g)) {
      const target = new URL(href.replaceAll('&amp;', '&'), `http://site${address}`);
      if (target.host !== 'site') continue;
      const path = decodeURIComponent(target.pathname);
      const there = anchors.get(path);
      if (there === undefined) {
        if (path.endsWith('/') || !existsSync(join(folder, path))) {
          wrong.push(`${address} links to ${href}, and no such page was built.`);
        }
      } else if (target.hash !== '' && !there.includes(decodeURIComponent(target.hash.slice(1)))) {
        wrong.push(`${address} links to ${href}, and that page has no such place.`);
      }
    }
  }
  return wrong;
}
