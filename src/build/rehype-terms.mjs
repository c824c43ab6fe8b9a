// Keeps the full stop after a <Term> on the line of the word. A term is a button, a browser may break
// a line after a button, and a joining character does not stop Chromium from it. The words inside the
// button may still break.

const closing = /^[.,;:!?)\]”’"']+/;

const isTerm = (node) => node.type === 'mdxJsxTextElement' && node.name === 'Term';

function kept(children) {
  const out = [];
  for (let index = 0; index < children.length; index += 1) {
    const node = children[index];
    const next = children[index + 1];
    const [mark] = (isTerm(node) && next?.type === 'text' && closing.exec(next.value)) || [];
    if (mark === undefined) {
      out.push(node);
      continue;
    }
    out.push({
      type: 'element',
      tagName: 'span',
      properties: { className: ['term-kept'] },
      children: [node, { type: 'text', value: mark }],
    });
    const rest = next.value.slice(mark.length);
    if (rest !== '') out.push({ ...next, value: rest });
    index += 1;
  }
  return out;
}

function walk(node) {
  if (node.children === undefined) return;
  for (const child of node.children) walk(child);
  node.children = kept(node.children);
}

export const rehypeTerms = () => walk;
