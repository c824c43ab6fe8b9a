// Tables that the lessons write in Markdown: a wide one scrolls by itself and not the page, and the
// empty corner above a column of row names is a cell, since a heading without words is none.

const wordsOf = (node) =>
  node.type === 'text' ? node.value : (node.children ?? []).map(wordsOf).join(' ');

function headings(node, found = []) {
  for (const child of node.children ?? []) {
    if (child.type === 'element' && child.tagName === 'th') found.push(child);
    else headings(child, found);
  }
  return found;
}

function wrapped(table, label) {
  const names = [];
  for (const heading of headings(table)) {
    // A tag such as <Num> has no words here yet, but will: it is a child, so the cell is not empty.
    if (heading.children.length === 0) heading.tagName = 'td';
    const words = wordsOf(heading).replace(/\s+/g, ' ').trim();
    if (words !== '') names.push(words);
  }
  return {
    type: 'element',
    tagName: 'div',
    // Reached with Tab: a browser without a mouse has no other way to scroll it.
    properties: {
      className: ['table-wide'],
      tabIndex: 0,
      role: 'group',
      ariaLabel: `${label}: ${names.join(', ')}`,
    },
    children: [table],
  };
}

function walk(node, label) {
  if (node.children === undefined) return;
  node.children = node.children.map((child) => {
    if (child.type === 'element' && child.tagName === 'table') return wrapped(child, label);
    walk(child, label);
    return child;
  });
}

/** `label`: what a screen reader is told it is, in the language of the build. */
export const rehypeTables =
  ({ label }) =>
  (tree) =>
    walk(tree, label);
