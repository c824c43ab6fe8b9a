/**
 * Fluid flows in a drawing for five seconds after it comes into sight and after anything is moved
 * beside it; then it rests, and costs nothing. What goes on longer by itself would need a button
 * that stops it (WCAG 2.2, 2.2.2). Where motion is not wanted the style sheet keeps it still.
 */
const LASTS_MS = 5000;

const rests = new WeakMap<Element, ReturnType<typeof setTimeout>>();

function flow(drawing: Element): void {
  clearTimeout(rests.get(drawing));
  drawing.setAttribute('data-flows', '');
  rests.set(
    drawing,
    setTimeout(() => drawing.removeAttribute('data-flows'), LASTS_MS),
  );
}

const inSight = new Set<Element>();
const seen = new IntersectionObserver((entries) => {
  for (const { target, isIntersecting } of entries) {
    if (isIntersecting) {
      inSight.add(target);
      flow(target);
    } else {
      inSight.delete(target);
      target.removeAttribute('data-flows');
    }
  }
});

for (const drawing of document.querySelectorAll('.dw')) seen.observe(drawing);
// A drawing that comes later, as those below a picture do, is one that has not been seen.
new MutationObserver((changes) => {
  for (const { addedNodes } of changes) {
    for (const node of addedNodes) {
      if (!(node instanceof Element)) continue;
      if (node.matches('.dw')) seen.observe(node);
      for (const drawing of node.querySelectorAll('.dw')) seen.observe(drawing);
    }
  }
}).observe(document.body, { childList: true, subtree: true });

for (const kind of ['input', 'click']) {
  document.addEventListener(kind, ({ target }) => {
    const bench = target instanceof Element ? target.closest('.sim, .home-circuit') : null;
    for (const drawing of inSight) if (bench?.contains(drawing)) flow(drawing);
  });
}
