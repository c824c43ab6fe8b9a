// Marks of where a statement comes from: <Src>, and the words "(common practice, no source)", which become a mark of the
// same kind. A mark follows the stop of its clause and no space stands before it, so that none begins a line.

const stops = /^[.,;:!?]+/;
const JOINED = '\u2060';

const isMark = (node) =>
  (node?.type === 'mdxJsxTextElement' && node.name === 'Src') ||
  node?.properties?.className?.includes('cited') === true;

const text = (value) => ({ type: 'text', value });

const element = (tagName, className, children = []) => ({
  type: 'element',
  tagName,
  properties: { className: [className] },
  children,
});

function noSource({ label, href, hreflang }) {
  const mark = element('a', 'cited', [
    element('span', 'cited-sign'),
    element('span', 'cited-words', [text(label)]),
  ]);
  mark.properties = { className: ['cited', 'cited-none'], href, ...(hreflang && { hreflang }) };
  return mark;
}

/** The words in one piece of text, with what else stood in their brackets left there. */
function withMarks({ value }, options) {
  const pattern = new RegExp(
    `(?:\\(|([;:]) )${options.words.replaceAll(' ', '\\s+')}(\\.?)\\)`,
    'g',
  );
  const out = [];
  let from = 0;
  for (const found of value.matchAll(pattern)) {
    const [whole, apart, stop] = found;
    // In brackets with other words, the bracket closes before the mark.
    const before = value.slice(from, found.index) + (apart === undefined ? '' : `${stop})`);
    out.push(text(before), noSource(options));
    from = found.index + whole.length;
  }
  return [...out, text(value.slice(from))];
}

function placed(children) {
  const out = [];
  for (const node of children) {
    const before = out.at(-1);
    if (isMark(node) && before?.type === 'text') before.value = before.value.trimEnd() + JOINED;
    if (node.type === 'text' && isMark(before)) {
      const [stop = ''] = stops.exec(node.value) ?? [];
      if (stop !== '') {
        const earlier = out.at(-2);
        if (earlier?.type === 'text')
          earlier.value = earlier.value.replace(JOINED, '') + stop + JOINED;
        else out.splice(-1, 0, text(stop + JOINED));
        node.value = node.value.slice(stop.length);
      }
    }
    if (node.type !== 'text' || node.value !== '') out.push(node);
  }
  return out;
}

function walk(node, options) {
  if (node.children === undefined) return;
  for (const child of node.children) walk(child, options);
  node.children = placed(
    node.children.flatMap((child) => (child.type === 'text' ? withMarks(child, options) : [child])),
  );
}

/** `words`: as a lesson writes them; `label`: what the mark says; `href`, `hreflang`: where it leads. */
export const rehypeMarks = (options) => (tree) => walk(tree, options);
