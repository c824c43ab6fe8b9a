/**
 * Pages that were built for the root of a host, made to work in whatever folder a platform puts them. Addresses of folders
 * get their file, since platforms hand out files alone.
 */
import { createHash } from 'node:crypto';

const hash = (text: string): string => createHash('sha256').update(text).digest('base64');

/** "/lessons/x/#top" in a page two folders down is "../../lessons/x/index.html#top". */
function asFile(address: string, root: string): string {
  const [, path = '', rest = ''] = /^\/([^?#]*)(.*)$/u.exec(address) ?? [];
  const file = path === '' || path.endsWith('/') ? `${path}index.html` : path;
  return root + file + rest;
}

const rootOf = (address: string): string => {
  const depth = address.split('/').length - 2;
  return depth === 0 ? './' : '../'.repeat(depth);
};

/** @param address of the page on the site: "/lessons/what-slip-is/" */
export function relativePage(html: string, address: string): string {
  const root = rootOf(address);
  const file = (at: string): string => asFile(at, root);
  const changed: (readonly [before: string, after: string])[] = [];
  let out = html.replace(/<(?!script[^>]*>[^<])[a-z][^>]*>/gu, (tag) =>
    tag
      .replace(
        /\s(href|src|action|component-url|renderer-url|before-hydration-url)="(\/(?!\/)[^"]*)"/gu,
        (_, name: string, at: string) => ` ${name}="${file(at)}"`,
      )
      // What an island is handed: a folder is something that addresses are put together with.
      .replace(/\[0,&quot;\/&quot;\]/gu, `[0,&quot;${root}&quot;]`)
      .replace(
        /\[0,&quot;(\/[a-z][^&]*)&quot;\]/gu,
        (_, at: string) => `[0,&quot;${file(at)}&quot;]`,
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

/**
 * Scripts stand in one folder, and know where they stand themselves.
 * @param up from that folder to the root: ".." or, for another language, "../.."
 */
export function relativeScript(script: string, up = '..'): string {
  const root = `\${new URL('${up}/',import.meta.url).href}`;
  const file = (path: string): string => path.replace(/\/(?=[?#]|$)/u, '/index.html');
  return (
    script
      // The search may start its worker from the folder of the index, wherever that stands now.
      .replace(String.raw`/^(\/[a-z]{2})?\/pagefind`, String.raw`/\/pagefind`)
      // What is fetched ahead is named by its place beside the folder of scripts.
      .replace(
        /function\((\w)\)\{return`\/(?:[a-z]{2}\/)?`\+\1\}/gu,
        (_, name: string) =>
          `function(${name}){return new URL('../'+${name},import.meta.url).href}`,
      )
      .replace(/`\/practise\/case\/(?=\$)/gu, `\`${root}practise/case/index.html`)
      .replace(
        /`\/((?:_astro|lessons|practise|measure|model|search|course|glossary|sources|logs|pagefind)\/[^`]*)`/gu,
        (_, path: string) => `\`${root}${file(path)}\``,
      )
  );
}
