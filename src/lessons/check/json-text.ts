/** JSON with the place of every value, for question files. */
import {
  findNodeAtLocation,
  getNodeValue,
  parseTree,
  printParseErrorCode,
  type Node,
  type ParseError,
} from 'jsonc-parser';
import type { Placed } from './fault.ts';

export interface JsonText {
  readonly value: unknown;
  readonly faults: readonly Placed[];
  /** Offset of the value at a path, or of the nearest thing round it that is there. */
  readonly placeOf: (path: readonly PropertyKey[], key?: string) => number;
}

/** By the parser's own names for what it missed. */
const said: Readonly<Record<string, string>> = {
  CommaExpected: 'a comma is missing before this.',
  CommentsNotAllowed: 'JSON has no comments.',
  InvalidCommentToken: 'JSON has no comments.',
  CloseBraceExpected: 'a closing brace } is missing.',
  CloseBracketExpected: 'a closing bracket ] is missing.',
  ColonExpected: 'a colon is missing between a key and its value.',
  EndOfFileExpected: 'the file goes on after the end of its list.',
  InvalidCharacter: 'this character cannot stand in a text.',
  InvalidEscapeCharacter: 'after a \\ only ", \\, /, b, f, n, r, t or u and four digits may stand.',
  InvalidNumberFormat: 'this is no number.',
  InvalidSymbol: 'this is no value: text stands in double quotes.',
  InvalidUnicode: 'after \\u stand four hexadecimal digits.',
  PropertyNameExpected: 'a key in double quotes is missing; no comma stands after the last one.',
  UnexpectedEndOfString: 'a text is not closed: its second double quote is missing on this line.',
  UnexpectedEndOfNumber: 'a number is not finished.',
  ValueExpected: 'a value is missing; no comma stands after the last one.',
};

export function readJson(text: string): JsonText {
  const errors: ParseError[] = [];
  const root = parseTree(text, errors, { disallowComments: true });
  const [first] = errors;
  if (first !== undefined || root === undefined) {
    // One slip upsets all that follows, so only the first is told.
    const what =
      first === undefined ? 'the file is empty.' : said[printParseErrorCode(first.error)];
    const fault = {
      offset: first?.offset ?? 0,
      sentence: `This is not valid JSON: ${what ?? 'it cannot be read from here on.'}`,
    };
    return { value: undefined, faults: [fault], placeOf: () => 0 };
  }
  return {
    value: getNodeValue(root) as unknown,
    faults: doubled(root),
    placeOf: (path, key) => place(root, key === undefined ? path : [...path, key]),
  };
}

function place(root: Node, path: readonly PropertyKey[]): number {
  for (let length = path.length; length > 0; length -= 1) {
    const node = findNodeAtLocation(root, path.slice(0, length) as (string | number)[]);
    // The key of a property stands first in it.
    if (node !== undefined) return (node.parent?.type === 'property' ? node.parent : node).offset;
  }
  return root.offset;
}

/** JSON keeps the last of two equal keys in silence. */
function doubled(node: Node): readonly Placed[] {
  const children = node.children ?? [];
  if (node.type !== 'object') return children.flatMap(doubled);
  const seen = new Set<unknown>();
  return children.flatMap((property) => {
    const [key, value] = property.children ?? [];
    const again = seen.has(key?.value);
    seen.add(key?.value);
    return [
      ...(again
        ? [
            {
              offset: property.offset,
              sentence: `"${String(key?.value)}" stands here twice. Keep one.`,
            },
          ]
        : []),
      ...(value === undefined ? [] : doubled(value)),
    ];
  });
}
