/** Pages that were built for the root of a host, made to work in another place: any folder of a package, or a given folder of a host. */
import { createHash } from 'node:crypto';

export interface Elsewhere {
  /** The root of the site as a page writes it. @param page address on the site: "/lessons/what-slip-is/" */
  root(page: string): string;
  /**
   * The same in a script, as it stands in a template.
   * @param up from the folder of the script to the root: ".." or, for another language, "../.."
   */
  rootInScript(up: string): string;
  /** What the address of a folder needs at its end. */
  readonly index: string;
}

const rootOf = (page: string): string => {
  const depth = page.split('/').length - 2;
  return depth === 0 ? './' : '../'.repeat(depth);
};

/** Wherever a platform unpacks it. Addresses of folders get their file, since platforms hand out files alone. */
export const inPackage: Elsewhere = {
  root: rootOf,
  rootInScript: (up) => `\${new URL('${up}/',import.meta.url).href}`,
  index: 'index.html',
};

/** In a folder of a host: "/shop/". */
export const under = (base: string): Elsewhere => ({
  root: () => base,
  rootInScript: () => base,
  index: '',
});

const hash = (text: string): string => createHash('sha256').update(text).digest('base64');

/** "/lessons/x/#top" in a page two folders down is "../../lessons/x/index.html#top". */
function asFile(address: string, root: string, { index }: Elsewhere): string {
  const [, path = '', rest = ''] = /^\/([^?#]*)(.*)$/u.exec(address) ?? [];
  const file = path === '' || path.endsWith('/') ? path + index : path;
  return root + file + rest;
}

/** @param address of the page on the site: "/lessons/what-slip-is/" */
export function movedPage(html: string, address: string, place: Elsewhere): string {
  const root = place.root(address);
  const file = (at: string): string => asFile(at, root, place);
  const changed: (readonly [before: string, after: string])[] = [];
  let out = html.replace(/<(?!script[^>]*>[^<])[a-z][^>]*>/gu, (tag) =>
    tag
      .replace(
        /\s(href|src|action|component-url|renderer-url|before-hydration-url)="(\/(?!\/)[^"]*)"/gu,
        (_, name: string, at: string) => ` ${name}="${file(at)}"`,
      )
      // What an island is handed: a folder is something that addresses are put together with. Both at once: in a folder of a
      // host the root is an address itself, and would be moved again.
      .replace(/\[0,&quot;(\/(?:[a-z][^&]*)?)&quot;\]/gu, (_, at: string) =>
        at === '/' ? `[0,&quot;${root}&quot;]` : `[0,&quot;${file(at)}&quot;]`,
      ),
  );
  // The policy of the page names its own scripts and styles by their sums.
  out = out.replace(
    /<(style|script)\b([^>]*)>([^]*?)<\/\1>/gu,
    (whole, name: string, rest: string, text: string) => {
      const now =
        name === 'style'
          ? text.replace(
              /url\((["']?)(\/[^)"']+)\1\)/gu,
              (_, quote: string, at: string) => `url(${quote}${file(at)}${quote})`,
            )
          : text.replace(/((?:from|import)\s*\(?["'`])\/(?=_astro\/)/gu, `$1${root}`);
      if (now === text) return whole;
      changed.push([hash(text), hash(now)]);
      return `<${name}${rest}>${now}</${name}>`;
    },
  );
  for (const [before, after] of changed) out = out.replaceAll(before, after);
  return out;
}

/** What stands at the root of the site and is named in scripts and data. */
const places =
  '_astro|lessons|practise|questions|measure|model|search|course|glossary|sources|logs|pagefind|whole-car|offline|meetings|proof|es';

/** Scripts stand in one folder, and know where they stand themselves. */
export function movedScript(script: string, up: string, place: Elsewhere): string {
  const root = place.rootInScript(up);
  const file = (path: string): string => path.replace(/\/(?=[?#]|$)/u, `/${place.index}`);
  return (
    script
      // The search may start its worker from the folder of the index, wherever that stands now.
      .replace(String.raw`/^(\/[a-z]{2})?\/pagefind`, String.raw`/\/pagefind`)
      // What addresses are put together with: src/language/languages.ts.
      .replace(
        /(\bbase:`)\/((?:[a-z]{2}\/)?`)/gu,
        (_, before: string, after: string) => before + root + after,
      )
      // What is fetched ahead is named by its place beside the folder of scripts.
      .replace(
        /function\((\w)\)\{return`\/(?:[a-z]{2}\/)?`\+\1\}/gu,
        (_, name: string) =>
          `function(${name}){return new URL('../'+${name},import.meta.url).href}`,
      )
      .replace(/`\/practise\/case\/(?=\$)/gu, () => `\`${root}practise/case/${place.index}`)
      .replace(
        new RegExp(`\`/((?:${places})/[^\`]*)\``, 'gu'),
        (_, path: string) => `\`${root}${file(path)}\``,
      )
  );
}

/** Data that pages fetch names pages of the site too. */
export const movedData = (json: string, base: string): string =>
  json.replace(new RegExp(`"/(?=(?:${places})/)`, 'gu'), `"${base}`);
