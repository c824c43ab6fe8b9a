// Opens what follows from a simulation once it has been run on this page, also before a reload. It lies below the simulation,
// so that opening it moves nothing that the reader looks at. For who ran it in another visit it opens as soon as the simulation is alive,
// which then stands at his controls.

/** What a simulation keeps with this page in the history of the tab: src/simulation/later/place.ts. */
interface Kept {
  readonly simulations?: Readonly<Record<string, { readonly outcome?: unknown } | undefined>>;
}

for (const fold of document.querySelectorAll<HTMLDetailsElement>('details.after-run')) {
  const of = fold.dataset['of'] ?? '';
  const simulation = document.getElementById(of);
  const ran = typeof (history.state as Kept | null)?.simulations?.[of]?.outcome === 'string';
  if (ran || simulation === null) {
    fold.open = true;
    continue;
  }
  const watch = new MutationObserver(() => {
    // While it asks, a simulation says so by this class.
    if (simulation.classList.contains('sim-asking')) return;
    fold.open = true;
    watch.disconnect();
  });
  watch.observe(simulation, { attributes: true, attributeFilter: ['class'] });
}
