// Served first on every page: keeps what a browser without a protocol for it would not tell.
window.trouble = [];
for (const [kind, say] of [
  ['error', (event) => event.message || `could not load ${event.target.src || event.target.href}`],
  ['unhandledrejection', (event) => String(event.reason)],
  ['securitypolicyviolation', (event) => `${event.violatedDirective} ${event.blockedURI}`],
]) {
  addEventListener(
    kind,
    (event) => {
      // Firefox calls a hint a failure where the module itself is on its way already. One that is
      // really missing fails again where it is imported.
      if (event.target.rel === 'modulepreload') return;
      window.trouble.push(`${kind}: ${say(event)}`);
    },
    true,
  );
}
