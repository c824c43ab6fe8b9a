/**
 * A sum as a lesson writes it, `force-at-400 = pressure-400 * piston-area`: names of numbers, plain figures, pi, + - * / ^2,
 * sqrt( ) and brackets. A minus has a space on either side, because names have hyphens.
 */
export type Term =
  | { readonly kind: 'number'; readonly id: string }
  | { readonly kind: 'figure'; readonly value: number }
  | { readonly kind: 'pi' }
  | { readonly kind: 'root'; readonly of: Term }
  | { readonly kind: 'square'; readonly of: Term }
  | { readonly kind: Operator; readonly left: Term; readonly right: Term };
export type Operator = '+' | '-' | '*' | '/';

export interface Sum {
  readonly result: string;
  readonly term: Term;
}

const token = /\s*([a-z][a-z0-9]*(?:-[a-z0-9]+)*|\d+(?:\.\d+)?|[-+*/()=]|\^2)/y;
const isName = (piece: string): boolean => /^[a-z]/.test(piece);

function pieces(text: string): string[] {
  const found: string[] = [];
  token.lastIndex = 0;
  const whole = text.trimEnd();
  while (token.lastIndex < whole.length) {
    const at = token.lastIndex;
    const [, piece] = token.exec(whole) ?? [];
    if (piece === undefined)
      throw new Error(
        `"${whole.slice(at).trim()}" in the sum cannot be read. It may have names of numbers, figures, pi, + - * / ^2, sqrt( ) and brackets.`,
      );
    found.push(piece);
  }
  return found;
}

/** Throws a sentence on what is no sum. */
export function readSum(text: string): Sum {
  const rest = pieces(text);
  const [result = '', equals] = rest.splice(0, 2);
  if (!isName(result) || equals !== '=')
    throw new Error(
      `"${text}" is no sum. Begin with the number that comes out: "force-at-400 = pressure-400 * piston-area".`,
    );
  const term = added(rest);
  if (rest.length > 0) throw new Error(`"${rest.join(' ')}" in the sum stands behind its end.`);
  return { result, term };
}

function added(rest: string[]): Term {
  let left = multiplied(rest);
  while (rest[0] === '+' || rest[0] === '-')
    left = { kind: rest.shift() as Operator, left, right: multiplied(rest) };
  return left;
}

function multiplied(rest: string[]): Term {
  let left = squared(rest);
  while (rest[0] === '*' || rest[0] === '/')
    left = { kind: rest.shift() as Operator, left, right: squared(rest) };
  return left;
}

function squared(rest: string[]): Term {
  const of = single(rest);
  if (rest[0] !== '^2') return of;
  rest.shift();
  return { kind: 'square', of };
}

function single(rest: string[]): Term {
  const piece = rest.shift();
  if (piece === 'sqrt' && rest[0] === '(') return { kind: 'root', of: single(rest) };
  if (piece === 'pi') return { kind: 'pi' };
  if (piece === '(') {
    const inside = added(rest);
    if (rest.shift() !== ')') throw new Error('A bracket of the sum is never closed.');
    return inside;
  }
  if (piece !== undefined && isName(piece)) return { kind: 'number', id: piece };
  if (piece !== undefined && /^\d/.test(piece)) return { kind: 'figure', value: Number(piece) };
  throw new Error(
    piece === undefined
      ? 'The sum breaks off where a number should follow.'
      : `A number should stand before "${piece}" in the sum.`,
  );
}

/** Names of the numbers in it, each once, from left to right. */
export function numbersIn(term: Term): readonly string[] {
  if (term.kind === 'number') return [term.id];
  if (term.kind === 'root' || term.kind === 'square') return numbersIn(term.of);
  if ('left' in term) return [...new Set([...numbersIn(term.left), ...numbersIn(term.right)])];
  return [];
}

export function valueOf(term: Term, value: (id: string) => number): number {
  switch (term.kind) {
    case 'number':
      return value(term.id);
    case 'figure':
      return term.value;
    case 'pi':
      return Math.PI;
    case 'root':
      return Math.sqrt(valueOf(term.of, value));
    case 'square':
      return valueOf(term.of, value) ** 2;
    case '+':
      return valueOf(term.left, value) + valueOf(term.right, value);
    case '-':
      return valueOf(term.left, value) - valueOf(term.right, value);
    case '*':
      return valueOf(term.left, value) * valueOf(term.right, value);
    case '/':
      return valueOf(term.left, value) / valueOf(term.right, value);
  }
}
