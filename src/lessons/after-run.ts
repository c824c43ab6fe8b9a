// Opens what follows from a simulation once its answer is out, and when a reader comes back to one that has been run. It
// lies below the simulation, so nothing above the reader moves.
for (const fold of document.querySelectorAll<HTMLDetailsElement>('details.after-run')) {
  const simulation = document.getElementById(fold.dataset['of'] ?? '');
  if (simulation === null) continue;
  // While it asks, a simulation says so by this class.
  const isOut = () => !simulation.classList.contains('sim-asking');
  const watch = new MutationObserver(() => {
    if (!isOut()) return;
    fold.open = true;
    watch.disconnect();
  });
  if (isOut()) fold.open = true;
  else watch.observe(simulation, { attributes: true, attributeFilter: ['class'] });
}
