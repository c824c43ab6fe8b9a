// Says at the top of home and of practice what waits on this device.
const box = document.querySelector<HTMLElement>('.waits');

function look(): void {
  // Without a connection the lines stay as the page has them, and lead where they lead.
  if (box?.querySelector('a:not([hidden])')) {
    void import('./fill.ts').then(({ fill }) => fill(box)).catch(() => undefined);
  }
}

// After the page has been drawn: nothing that is read waits for it.
requestAnimationFrame(() => setTimeout(look));
// A page taken from the browser's memory on "back" has not run again.
addEventListener('pageshow', ({ persisted }) => {
  if (persisted) look();
});
