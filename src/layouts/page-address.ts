// For paper only: where the page stood, which nobody knows at build time; without the state behind #, which nobody types.
const line = document.querySelector<HTMLElement>('#page-address');
if (line !== null) {
  const { origin, pathname, search } = location;
  line.textContent = `${line.dataset['before'] ?? ''} ${origin}${pathname}${search}`;
}
