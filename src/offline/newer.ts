// A line over the page, once a newer version of the site is stored whole. It waits while something is under way, which an
// element with `data-busy` says (src/styles/pages.css hides the line then), and it reloads nothing that is open elsewhere.
import { takeOver } from './registration.ts';
import { words } from './words.en.ts';

let shown: HTMLElement | undefined;

function button(text: string, press: () => void): HTMLButtonElement {
  const made = document.createElement('button');
  made.type = 'button';
  made.textContent = text;
  made.addEventListener('click', press);
  return made;
}

export function offer(newer: ServiceWorker): void {
  shown?.remove();
  const line = document.createElement('div');
  line.className = 'newer no-print';
  line.setAttribute('role', 'status');
  const says = document.createElement('p');
  says.textContent = words.newer;
  const reload = button(words.reload, () => {
    const { serviceWorker } = navigator;
    serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true });
    takeOver(newer).then(
      ({ others }) => {
        if (others > 0) says.textContent = words.closeOthers;
      },
      () => (says.textContent = words.closeAll),
    );
  });
  line.append(
    says,
    reload,
    button(words.later, () => line.remove()),
  );
  document.body.prepend(line);
  shown = line;
}
