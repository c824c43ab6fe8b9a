// A word in a formula is a word: `F_{spring}` would be set as six variables side by side, spaced and slanted.
// So a subscript of two letters or more, and a word alone in the braces of a fraction, become text.

const WORD = /(?<=_)\{([A-Za-z]{2,})\}|(?<=\})\{([A-Za-z]{4,})\}/g;

const inMath = ({ properties }) =>
  [properties?.className ?? []].flat().some((name) => String(name).startsWith('math-'));

function walk(node, math) {
  for (const child of node.children ?? []) {
    if (child.type === 'text' && math) {
      child.value = child.value.replace(WORD, (_, sub, word) => `{\\text{${sub ?? word}}}`);
    } else walk(child, math || inMath(child));
  }
}

export const rehypeMathWords = () => (tree) => walk(tree, false);
