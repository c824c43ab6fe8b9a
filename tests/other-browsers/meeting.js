/**
 * Runs in the page of a meeting in whatever browser it is, with the probe before it: goes through every step of it by the key of a
 * clicker, with hands raised at each vote.
 */
// eslint-disable-next-line no-unused-vars -- run.ts calls it in the page
async function walkMeeting(steps) {
  const seen = { title: document.title, simulations: [], trouble: [] };
  const one = (selector) => document.querySelector(selector);
  const press = (key, code = key) =>
    (document.activeElement ?? document.body).dispatchEvent(
      new window.KeyboardEvent('keydown', { key, code, bubbles: true, cancelable: true }),
    );
  try {
    await until('the start', () => one('.meeting-start')?.dataset.ready === 'true');
    one('.meeting-start button.act').click();
    await until('the wall', () => one('.stage-scene > h2'));
    for (const { hash, step } of steps) {
      await until(`step ${hash}`, () => window.location.hash === hash);
      if (step === 'ask') {
        const raised = () => Number(one('.stage-counter input').value);
        await until('the counters', () => one('.stage-counter input'));
        // One for each option, so that each of them is asked why.
        document
          .querySelectorAll('.stage-counter')
          .forEach((_, i) => press(String(i + 1), `Digit${i + 1}`));
        await until('a raised hand', () => raised() === 1);
      } else if (step === 'tally') {
        await until('the bars', () => one('.stage-bar'));
      } else if (step === 'answer') {
        await until('the answer', () => one('.stage-right'));
      } else if (step === 'why') {
        await until('why not', () => one('.stage-why'));
      } else if (step === 'state' || step === 'run') {
        await until('the simulation', () => one('.stage-simulation .sim:not(.sim-asking)'));
      } else if (step === 'open') {
        await until('the car', () => one('.stage-car .case-bar'));
      }
      if (document.documentElement.scrollWidth > innerWidth + 1)
        seen.trouble.push(`${hash} scrolls sideways`);
      press('PageDown');
    }
    press('Escape');
    await until('the end', () => !one('.stage'));
  } catch (error) {
    seen.trouble.push(`${window.location.hash}: ${error.message}`);
  }
  seen.trouble.push(...window.trouble);
  return seen;
}
