/**
 * Fluid flows in a drawing for five seconds after it comes into sight and after anything is moved
 * beside it; then it rests, and costs nothing. What goes on longer by itself would need a button
 * that stops it (WCAG 2.2, 2.2.2). Where motion is not wanted the style sheet keeps it still.
 */
const LASTS_MS = 5000;

const rests = new WeakMap<Element, number>();

function flow(drawing: Element): void {
  window.clearTimeout(rests.get(drawing));
  drawing.setAttribute('data-flows', '');
  const rest = () => drawing.removeAttribute('data-flows');
  rests.set(drawing, window.setTimeout(rest, LASTS_MS));
}

const sight = new IntersectionObserver((entries) => {
  for (const { target, isIntersecting } of entries) if (isIntersecting) flow(target);
});
/** Again at each press, since drawings come with it. */
const watch = () => {
  for (const drawing of document.querySelectorAll('.dw')) sight.observe(drawing);
};

watch();
document.addEventListener('click', watch);
for (const kind of ['input', 'click']) {
  document.addEventListener(kind, ({ target }) => {
    const bench = target instanceof Element && target.closest('.sim, .home-circuit');
    if (bench) bench.querySelectorAll('.dw').forEach(flow);
  });
}
