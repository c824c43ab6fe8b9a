import type { BuiltPage } from './pages.ts';

/** One sentence for each thing in a page's markup that our policy or our promises forbid. */
export function forbiddenMarkup({ address, html }: BuiltPage): string[] {
  const tags = html.match(/<[a-z][^>]*>/g) ?? [];
  const found: string[] = [];
  // rehype-katex prints a formula it cannot read in place of failing.
  for (const [, why = ''] of html.matchAll(/class="katex-error"[^>]*?title="([^"]*)"/g)) {
    found.push(`${address}: a formula cannot be read. ${why}`);
  }
  for (const tag of tags) {
    if (/\sstyle=/.test(tag)) {
      found.push(`${address}: the content security policy ignores the style attribute of ${tag}`);
    }
    if (/\son[a-z]+=/.test(tag)) {
      found.push(`${address}: the content security policy blocks the handler in ${tag}`);
    }
    if (
      /^<(script|link|img|iframe|source|video|audio)\b/.test(tag) &&
      /(src|href)="(https?:)?\/\//.test(tag)
    ) {
      found.push(`${address}: nothing may be loaded from elsewhere, but there is ${tag}`);
    }
  }
  const policy = html.match(/http-equiv="content-security-policy"[^>]*>/)?.[0];
  if (policy === undefined) {
    found.push(`${address} has no content security policy.`);
    return found;
  }
  if (/(?<!wasm-)unsafe-/.test(policy)) {
    found.push(`${address}: the content security policy has an unsafe- word in it.`);
  }
  // Lets WebAssembly be compiled, never text be run as code. The search needs it; nothing else does.
  if (policy.includes('wasm-unsafe-eval') && address !== '/search/') {
    found.push(`${address}: only the search page may compile WebAssembly.`);
  }
  return found;
}
