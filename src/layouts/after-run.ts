// Opens what follows from a simulation once it has been run, on this page or earlier on this device. It lies below the
// simulation, so that opening it moves nothing that the reader looks at.
import { readAnswers } from '../storage/answers.ts';

const folds = [...document.querySelectorAll<HTMLDetailsElement>('details.after-run')];
const shut = (): HTMLDetailsElement[] => folds.filter(({ open }) => !open);
const simulationOf = (fold: HTMLDetailsElement): string => fold.dataset['of'] ?? '';

/** What the simulation keeps with this page in the history of the tab: src/simulation/later/place.ts. */
function ranOnThisPage(simulation: string): boolean {
  const { simulations } = (history.state ?? {}) as {
    readonly simulations?: Readonly<Record<string, { readonly outcome?: unknown } | undefined>>;
  };
  return typeof simulations?.[simulation]?.outcome === 'string';
}

for (const fold of folds) {
  const simulation = document.getElementById(simulationOf(fold));
  if (ranOnThisPage(simulationOf(fold))) fold.open = true;
  if (fold.open || simulation === null) continue;
  const watch = new MutationObserver(() => {
    // While it asks, a simulation says so by this class.
    if (simulation.classList.contains('sim-asking')) return;
    fold.open = true;
    watch.disconnect();
  });
  watch.observe(simulation, { attributes: true, attributeFilter: ['class'] });
}

/** A fold that lies above what the reader looks at would push it down where the browser does not hold it. */
const movesNothing = (fold: HTMLElement): boolean =>
  fold.getBoundingClientRect().top > 0 || CSS.supports('overflow-anchor', 'auto');

// Runs of earlier visits stand in the log of answers. It is read once the page is quiet, and only if a fold is shut.
const later = globalThis.requestIdleCallback ?? ((run: () => void) => setTimeout(run, 500));
later(() => {
  if (shut().length === 0) return;
  void readAnswers().then(({ answers }) => {
    const run = new Set(
      answers.flatMap(({ answer }) => (answer.kind === 'prediction' ? [answer.sim] : [])),
    );
    for (const fold of shut()) {
      if (run.has(simulationOf(fold)) && movesNothing(fold)) fold.open = true;
    }
  });
});
