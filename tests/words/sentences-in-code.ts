/**
 * Finds words for a reader that stand in code, where nobody can translate or edit them. It reads
 * the syntax tree, so that a comment, a type, a class name or a key is no sentence. A
 * single word outside the places of SHOWN passes it by.
 */
import ts from 'typescript';

export interface Found {
  readonly line: number;
  readonly text: string;
}

/** Two words of letters side by side: what a reader would call a phrase. */
const PHRASE = /\p{L}{2,}[,;:.!?’”]?[\s\u00a0]+[“‘(]?\p{L}{2,}/u;
const WORD = /\p{L}{2,}/u;
/** Properties and attributes that are put on the screen or read aloud: here one word is enough. */
const SHOWN = new Set(
  [
    'label',
    'words',
    'why',
    'hint',
    'after',
    'title',
    'question',
    'runLabel',
    'takeaway',
    'note',
  ].concat(
    ['on', 'off', 'reached', 'name', 'alt', 'placeholder', 'aria-label', 'caption'],
    ['lines', 'word', 'desc'],
  ),
);
/** Attributes that hold several names of the code's own. */
const NAMES = new Set([
  'class',
  'className',
  'd',
  'viewBox',
  'points',
  'transform',
  'rel',
  'allow',
  'aria-describedby',
  // Of a <meta>, for the browser.
  'content',
]);

const isText = (
  node: ts.Node,
): node is ts.StringLiteral | ts.NoSubstitutionTemplateLiteral | ts.TemplateExpression =>
  ts.isStringLiteralLike(node) || ts.isTemplateExpression(node);

function textOf(node: ts.Node): string {
  if (ts.isStringLiteralLike(node) || ts.isJsxText(node)) return node.text;
  if (!ts.isTemplateExpression(node)) return '';
  // A value in the middle is no word, and parts nothing.
  return node.head.text + node.templateSpans.map(({ literal }) => `0${literal.text}`).join('');
}

/** Where a text is the code talking to itself or to its maintainers. */
function forNoReader(node: ts.Node): boolean {
  const { parent } = node;
  if (ts.isImportDeclaration(parent) || ts.isExportDeclaration(parent)) return true;
  if (ts.isLiteralTypeNode(parent) || ts.isCaseClause(parent)) return true;
  if (ts.isBinaryExpression(parent)) {
    const { kind } = parent.operatorToken;
    return (
      kind === ts.SyntaxKind.EqualsEqualsEqualsToken ||
      kind === ts.SyntaxKind.ExclamationEqualsEqualsToken
    );
  }
  // A media query or a selector reads like words and is none.
  if (
    ts.isCallExpression(parent) &&
    /(^matchMedia|\.querySelector(All)?)$/u.test(parent.expression.getText())
  )
    return true;
  // What goes wrong by a maintainer's mistake is told to a maintainer.
  if (ts.isNewExpression(parent) && /Error$/u.test(parent.expression.getText())) return true;
  return ts.isPropertyAssignment(parent) && parent.name === node;
}

/** The property or attribute a text is the value of, through `?:`, `??`, arrow functions, lists and brackets. */
function placeOf(node: ts.Node): string | undefined {
  let at = node.parent;
  while (
    ts.isConditionalExpression(at) ||
    ts.isParenthesizedExpression(at) ||
    ts.isArrayLiteralExpression(at) ||
    ts.isArrowFunction(at) ||
    ts.isJsxExpression(at) ||
    ts.isBinaryExpression(at)
  ) {
    at = at.parent;
  }
  return ts.isPropertyAssignment(at) || ts.isJsxAttribute(at)
    ? at.name.getText().replace(/['"]/gu, '')
    : undefined;
}

/** An .astro file as code, line for line: front matter, then the markup without its styles and scripts. */
export function codeOf(astro: string): string {
  const blank = (text: string) => text.replace(/[^\n]/gu, '');
  const [, front, markup = astro] = /^---\n([^]*?)\n---\n([^]*)$/u.exec(astro) ?? [];
  const shown = markup.replace(
    /<(style|script)\b[^]*?<\/\1>|<!--[^]*?-->|<!doctype[^>]*>/giu,
    blank,
  );
  return front === undefined ? `<>${shown}</>;` : `\n${front}\n;<>\n${shown}</>;`;
}

export function sentencesIn(file: string, code: string): readonly Found[] {
  const source = ts.createSourceFile(file, code, ts.ScriptTarget.Latest, true, ts.ScriptKind.TSX);
  const found: Found[] = [];
  const visit = (node: ts.Node): void => {
    const place = isText(node) ? placeOf(node) : undefined;
    const skipped =
      isText(node) && (forNoReader(node) || (place !== undefined && NAMES.has(place)));
    if ((isText(node) && !skipped) || ts.isJsxText(node)) {
      const text = textOf(node).trim();
      const shown = ts.isJsxText(node) || (place !== undefined && SHOWN.has(place));
      // An input's name is a key; only inside a picture is it a heading.
      const key = place === 'name' && !/\s/u.test(text);
      if (PHRASE.test(text) || (shown && !key && WORD.test(text))) {
        const { line } = source.getLineAndCharacterOfPosition(node.getStart());
        found.push({ line: line + 1, text });
      }
    }
    if (!skipped) ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}
