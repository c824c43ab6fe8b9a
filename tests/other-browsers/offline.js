/** Runs in the page /offline/ of whatever browser it is: waits until the whole site is on the device. */
// eslint-disable-next-line no-unused-vars -- run.ts calls it in the page
async function untilStored() {
  const state = () => document.querySelector('#offline').dataset.state;
  // Where the engine keeps nothing the page says so, and stays at that.
  await until('the store', () => state() === 'ready', 100_000).catch(() => undefined);
  return { title: state(), simulations: [], trouble: [] };
}
