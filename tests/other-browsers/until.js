/** Stands before every script that run.ts runs in a page: waits until something is there, and hands it on. */
// eslint-disable-next-line no-unused-vars, no-redeclare -- the scripts behind it call it, and know its name from the settings of the linter
async function until(what, ready, most = 15_000) {
  const end = Date.now() + most;
  for (;;) {
    const found = ready();
    if (found) return found;
    if (Date.now() > end) throw new Error(`waited in vain for ${what}`);
    await new Promise((done) => setTimeout(done, 10));
  }
}
