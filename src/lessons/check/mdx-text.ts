/** A lesson or page as a tree with places, read by the same parsers that the site is built with. */
import type { Root } from 'mdast';
import type { MdxJsxFlowElement, MdxJsxTextElement } from 'mdast-util-mdx-jsx';
import remarkFrontmatter from 'remark-frontmatter';
import remarkGfm from 'remark-gfm';
import remarkMath from 'remark-math';
import remarkMdx from 'remark-mdx';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import type { Placed } from './fault.ts';

export type Tag = MdxJsxFlowElement | MdxJsxTextElement;

export interface MdxText {
  readonly text: string;
  readonly tree: Root;
  /** The front matter between its two lines of hyphens, and where it begins. */
  readonly head: string;
  readonly headAt: number;
}

const parser = unified()
  .use(remarkParse)
  .use(remarkFrontmatter)
  .use(remarkMdx)
  .use(remarkGfm)
  .use(remarkMath);

/** The parts of a text, or the one thing that keeps it from being read at all. */
export function readMdx(text: string): MdxText | Placed {
  let tree: Root;
  try {
    tree = parser.parse(text);
  } catch (error) {
    return unreadable(text, error);
  }
  const [first] = tree.children;
  if (first?.type !== 'yaml') {
    return {
      offset: 0,
      sentence:
        'The file must begin with its front matter: a line "---", lines of "key: value", and a line "---".',
    };
  }
  return { text, tree, head: first.value, headAt: text.indexOf('\n') + 1 };
}

/** What the MDX parser throws: a place, a rule, and a reason in its own words. */
interface ParserMessage {
  readonly reason?: string;
  readonly ruleId?: string;
  readonly place?: { offset?: number } | { start: { offset?: number } };
}

function unreadable(text: string, error: unknown): Placed {
  const { reason = String(error), ruleId = '', place } = error as ParserMessage;
  const point = place !== undefined && 'start' in place ? place.start : place;
  // A tag that is never closed is noticed where its paragraph ends; the reason says where it was opened.
  const [, line, column] = /`<[^`]*>` \((\d+):(\d+)/.exec(reason) ?? [];
  const opened = ruleId === 'end-tag-mismatch' && line !== undefined && column !== undefined;
  const offset = opened
    ? offsetOf(text, Number(line), Number(column))
    : (point?.offset ?? text.length);
  return { offset, sentence: `${advice(ruleId, text[offset])} (The parser says: ${reason})` };
}

function advice(ruleId: string, sign = ''): string {
  if (/tag/.test(ruleId)) {
    return 'The tags do not pair up. Each is closed by its own name, inside the block where it was opened, with a blank line before and after a block tag.';
  }
  if (ruleId === 'acorn' || sign === '{' || sign === '}') {
    return 'A brace begins code, and a lesson has none. Leave it out, or write \\{ for the sign.';
  }
  return 'A < begins a tag, and this is none. Write \\< for the sign, a formula such as $p < 3$, or the tag as in <Num id="…" />.';
}

/** Offset from 0 of a line and column from 1. */
export function offsetOf(text: string, line: number, column: number): number {
  const before = text.split('\n').slice(0, line - 1);
  return before.reduce((sum, { length }) => sum + length + 1, 0) + column - 1;
}
