/**
 * Runs in the page of whatever browser it is, with the probe before it: looks at the page, runs each
 * simulation once and moves its first control.
 */
// eslint-disable-next-line no-unused-vars -- run.ts calls it in the page
async function walk() {
  const seen = { title: document.title, simulations: [], trouble: [] };
  const say = (sentence) => seen.trouble.push(sentence);
  await until('the page', () => document.readyState === 'complete');
  if (!document.querySelector('main h1')) say('the page has no headline');
  if (document.documentElement.scrollWidth > innerWidth + 1) say('the page scrolls sideways');
  // What stands on paper where nobody has run it has no name.
  for (const sim of document.querySelectorAll('.sim[id]')) {
    const where = sim.id;
    try {
      sim.scrollIntoView();
      await until(`${where} to come alive`, () => sim.dataset.ready === 'true');
      const button = (selector) =>
        until(`${selector} in ${where}`, () => {
          const one = sim.querySelector(selector);
          return one && !one.disabled && one;
        });
      // Run on another page before, it comes back with its controls free.
      if (!sim.querySelector('.choice-stack input')) {
        sim.querySelector('.sim-nav button:first-child').click();
        await button('.choice-stack input');
      }
      sim.querySelector('.choice-stack input').click();
      sim.querySelector('.choice-row input').click();
      (await button('button[type="submit"]')).click();
      // Compare, the first task, your own controls.
      (await button('.compare ~ .act')).click();
      (await button('.task-words ~ .sim-go button')).focus();
      (await button('.sim-nav button:last-child')).click();
      await button('.more > summary, .sim-go button ~ :is(div, button)');
      const range = await until(
        `a control of ${where}`,
        () =>
          sim.querySelector(
            '.sim-controls :is(input[type="range"], select, input[type="radio"])',
          ) ??
          // A card of buttons has none of these.
          sim.querySelector('.sim-controls button[aria-pressed]'),
      );
      const before = sim.querySelector('.sim-picture').textContent;
      if (range.type === 'range') {
        range.value = String(Number(range.value) === Number(range.max) ? range.min : range.max);
        range.dispatchEvent(new Event('input', { bubbles: true }));
        await until(
          `${where} to answer its first control`,
          () => sim.querySelector('.sim-picture').textContent !== before,
        );
      }
      const shown = sim.querySelector('.sim-picture').textContent;
      if (/NaN|undefined|Infinity/.test(shown)) say(`${where} prints what is no number`);
      // One of several forms of it may show: upright or wide, before or after.
      const sizes = [...sim.querySelectorAll('.sim-picture :is(svg, table, ol, ul)')].map((one) =>
        one.getBoundingClientRect(),
      );
      if (!sizes.some(({ width, height }) => width >= 100 && height >= 50)) {
        say(
          `no picture of ${where} is to be seen: ${sizes.map((one) => `${one.width} by ${one.height} px`).join(', ')}`,
        );
      }
      seen.simulations.push(where);
    } catch (error) {
      say(`${where}: ${error.message}`);
    }
  }
  const heat = document.querySelector('#home-temp');
  if (heat) {
    await until(
      'the home page to come alive',
      () => document.querySelector('.home-circuit').dataset.ready === 'true',
    );
    heat.value = heat.max;
    heat.dispatchEvent(new Event('input', { bubbles: true }));
    await until('the headline to turn', () => document.querySelector('h1.now-slips'));
  }
  seen.trouble.push(...window.trouble);
  return seen;
}
