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
  return [...found, ...weakPolicy(address, html)];
}

/** The search page, in whatever language: the one that needs more than reading and drawing. */
const isSearch = (address: string): boolean => address.endsWith('/search/');

/**
 * Pages that start a worker name the one policy that passes its address; all others may make none but the one that every
 * page has, for the worker that stores the site.
 */
const policies: Readonly<Record<string, string>> = {
  '/measure/': 'own-sheet planner',
  '/measure/jobs/': 'own-sheet planner',
  '/measure/log/': 'log-reader',
  '/measure/transmission/': 'own-sheet',
  '/practise/case/': 'planner',
};
/** A meeting may bring a case onto its stage. */
const isMeeting = (address: string): boolean =>
  /^\/meetings\/[^/]+\/$/.test(address) && address !== '/meetings/notes/';
const ownPolicy = (address: string): string | undefined =>
  isSearch(address)
    ? 'default'
    : (policies[address] ?? (isMeeting(address) ? 'planner' : undefined));
const policyOf = (address: string): string =>
  ['offline', ownPolicy(address)].filter(Boolean).join(' ');

/** One sentence for each thing that the policy of a page should say and does not. */
function weakPolicy(address: string, html: string): string[] {
  const policy = html.match(/<meta http-equiv="content-security-policy"[^>]*>/);
  if (policy === null) return [`${address} has no content security policy.`];
  const [text] = policy;
  const found: string[] = [];
  if (html.slice(0, policy.index).includes('<script')) {
    found.push(`${address}: a script stands above the content security policy, which misses it.`);
  }
  if (/(?<!wasm-)unsafe-/.test(text)) {
    found.push(`${address}: the content security policy has an unsafe- word in it.`);
  }
  // Lets WebAssembly be compiled, never text be run as code. The search needs it; nothing else does.
  if (text.includes('wasm-unsafe-eval') && !isSearch(address)) {
    found.push(`${address}: only the search page may compile WebAssembly.`);
  }
  if (!text.includes("require-trusted-types-for 'script'")) {
    found.push(`${address}: the content security policy lets text become script.`);
  }
  const [, makers = 'any'] = text.match(/[; "]trusted-types ([^;"]*)/) ?? [];
  if (makers.trim() !== policyOf(address)) {
    found.push(
      `${address}: Trusted Types policies of its own: ${makers}. Only pages that start a worker have one.`,
    );
  }
  return found;
}
