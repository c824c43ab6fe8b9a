/** The page gives the title (h1) and the parts (h2), so a heading in the text is ### or, below one, ####. */
import type { Heading } from 'mdast';
import { visitParents } from 'unist-util-visit-parents';
import type { Placed } from './fault.ts';
import { isTag, startOf } from './mdx-tags.ts';
import type { MdxText } from './mdx-text.ts';

export function checkHeadings({ tree }: MdxText): readonly Placed[] {
  const faults: Placed[] = [];
  let depth = 2;
  visitParents(tree, (node) => {
    if (isTag(node) && ['Section', 'Tasks', 'Mistake', 'Recap'].includes(node.name ?? ''))
      depth = 2;
    // A task is headed by an h3 of its own.
    if (isTag(node) && node.name === 'Task') depth = 3;
    if (node.type !== 'heading') return;
    const fault = wrong(node, depth);
    if (fault !== undefined) faults.push({ offset: startOf(node), sentence: fault });
    depth = node.depth;
  });
  return faults;
}

function wrong({ depth }: Heading, above: number): string | undefined {
  const marks = '#'.repeat(depth);
  if (depth < 3)
    return `"${marks}" is for the page's title and parts, which come from "title" and <Section title="…">. Write ### here.`;
  if (depth > above + 1)
    return `"${marks}" leaves out a level: the heading above it is an h${above}. Write ${'#'.repeat(above + 1)} here.`;
  return undefined;
}
