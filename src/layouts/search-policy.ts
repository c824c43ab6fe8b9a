// The content security policy lets no text become script. Pagefind starts its worker from an address in
// text, so this page has a policy of its own, which passes that one address and nothing else.
// TypeScript's DOM library does not know Trusted Types yet.

interface TrustedTypes {
  createPolicy(name: 'default', rules: { createScriptURL(url: string): string }): void;
}

const worker = /^(\/[a-z]{2})?\/pagefind\/(us|si)\/pagefind-worker\.js$/;

/** The address of a script that may be started, as it came; anything else throws. */
export function workerAddress(text: string, page: string): string {
  const { origin, pathname } = new URL(text, page);
  if (origin === new URL(page).origin && worker.test(pathname)) return text;
  throw new TypeError(`The search may not start a script from ${text}.`);
}

const types = (globalThis as { trustedTypes?: TrustedTypes }).trustedTypes;
types?.createPolicy('default', { createScriptURL: (url) => workerAddress(url, location.href) });
