/**
 * A blank line before and after block tags, headings, tables and block formulas. Without one MDX takes what follows for the
 * same paragraph: it builds, and the page shows stars and hyphens instead of a list.
 */
import type { Node } from 'mdast';
import { visitParents } from 'unist-util-visit-parents';
import type { Placed } from './fault.ts';
import { formOf, isTag, startOf } from './mdx-tags.ts';
import { offsetOf, type MdxText, type Tag } from './mdx-text.ts';

export function checkBlankLines({ text, tree }: MdxText): readonly Placed[] {
  const lines = text.split('\n');
  const blank = (line: number): boolean => (lines[line - 1] ?? '').trim() === '';
  const faults: Placed[] = [];
  const around = (first: number, last: number, what: string): void => {
    const offset = (line: number): number => offsetOf(text, line, 1);
    if (!blank(first - 1))
      faults.push({ offset: offset(first), sentence: `Leave a blank line before ${what}.` });
    if (!blank(last + 1))
      faults.push({ offset: offset(last), sentence: `Leave a blank line after ${what}.` });
  };
  visitParents(tree, (node: Node) => {
    const { start, end } = node.position ?? {};
    if (start === undefined || end === undefined) return;
    if (isTag(node)) {
      if (node.type !== 'mdxJsxFlowElement' || formOf(node)?.stands !== 'alone') return;
      const name = `<${node.name ?? ''}`;
      const opened = start.line + openingTag(text, node).split('\n').length - 1;
      if (node.children.length === 0) around(start.line, end.line, `${name}>`);
      else {
        around(start.line, opened, `${name}>`);
        around(end.line, end.line, `</${node.name ?? ''}>`);
      }
    } else if (node.type in blocks) {
      around(start.line, end.line, blocks[node.type] ?? '');
    }
  });
  return faults;
}

const blocks: Readonly<Record<string, string>> = {
  heading: 'a heading',
  table: 'a table',
  math: 'a formula on lines of its own',
};

/** From its < to its >; a > inside a prop is not the end. */
function openingTag(text: string, tag: Tag): string {
  const last = tag.attributes.at(-1)?.position?.end.offset ?? startOf(tag);
  return text.slice(startOf(tag), text.indexOf('>', last) + 1);
}
