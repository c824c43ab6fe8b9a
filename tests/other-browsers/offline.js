/** Runs in the page /offline/ of whatever browser it is: waits until the whole site is on the device. */
// eslint-disable-next-line no-unused-vars -- run.ts calls it in the page
async function untilStored() {
  const state = () => document.querySelector('#offline').dataset.state;
  const end = Date.now() + 100_000;
  // Where the engine keeps nothing the page says so, and stays at that.
  while (state() !== 'ready' && Date.now() < end)
    await new Promise((done) => setTimeout(done, 100));
  return { title: state(), simulations: [], trouble: [] };
}
