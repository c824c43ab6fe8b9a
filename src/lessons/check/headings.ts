/**
 * Headings that leave out no level. The page gives the title (h1), and <Section> and its kin the parts (h2), so a heading
 * inside a part is ### or, below one, ####. A page without parts may have ## as well.
 */
import type { Heading } from 'mdast';
import { visitParents } from 'unist-util-visit-parents';
import type { Placed } from './fault.ts';
import { isTag, startOf } from './mdx-tags.ts';
import type { MdxText } from './mdx-text.ts';

/** Tags that open with a heading of their own, and its level. */
const opens: Readonly<Record<string, number>> = {
  Section: 2,
  Mistake: 2,
  Recap: 2,
  Tasks: 2,
  Task: 3,
  GoDeeper: 3,
};

export function checkHeadings({ tree }: MdxText): readonly Placed[] {
  const faults: Placed[] = [];
  let above = 1;
  visitParents(tree, (node, parents) => {
    if (isTag(node)) above = opens[node.name ?? ''] ?? above;
    if (node.type !== 'heading') return;
    const part = parents.some((parent) => isTag(parent) && (parent.name ?? '') in opens);
    const sentence = wrong(node, above, part);
    if (sentence !== undefined) faults.push({ offset: startOf(node), sentence });
    above = node.depth;
  });
  return faults;
}

function wrong({ depth }: Heading, above: number, part: boolean): string | undefined {
  const marks = '#'.repeat(depth);
  if (depth === 1)
    return `"#" is for the title of the page, which comes from "title" above. Write ## or ### here.`;
  if (part && depth === 2)
    return `"##" is for the parts of a page, which come from <Section title="…">. Write ### here.`;
  if (depth > above + 1)
    return `"${marks}" leaves out a level: the heading above it is an h${above}. Write ${'#'.repeat(above + 1)} here.`;
  return undefined;
}
