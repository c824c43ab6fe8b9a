/**
 * Numbers inside question text. `{pressure 600}` is a given, written by the author in the quantity's metric unit (src/quantity/quantities.ts); `{= key}` is a
 * number the engine computes. Both come out in both unit systems, so no text states an amount in one of them only.
 */
import { type QuantityName, quantityNames } from '../quantity/by-name.ts';
import { printBoth, type PrintedBoth } from '../quantity/print-both.ts';

export interface EngineNumber {
  readonly quantity: QuantityName;
  readonly value: number;
}
export type Lookup = (key: string) => EngineNumber;

/** A passage with its amounts as they are before rounding too. */
export type ReadPassage = readonly (string | PrintedBoth)[];

const token = /\{([^{}]*)\}/g;

export function readPassage(text: string, lookup: Lookup): ReadPassage {
  const out: (string | PrintedBoth)[] = [];
  const add = (piece: string | PrintedBoth): void => {
    if (piece !== '') out.push(piece);
  };
  let from = 0;
  for (const match of text.matchAll(token)) {
    add(text.slice(from, match.index));
    add(readToken(match[1] ?? '', lookup));
    from = match.index + match[0].length;
  }
  add(text.slice(from));
  return out;
}

function readToken(body: string, lookup: Lookup): PrintedBoth {
  const [head = '', tail = ''] = body.trim().split(/\s+/, 2);
  if (head === '=') {
    const { quantity, value } = lookup(tail);
    return printBoth(value, quantity);
  }
  const quantity = quantityNames.find((name) => name === head);
  const value = Number(tail);
  if (quantity === undefined || tail === '' || !Number.isFinite(value)) {
    throw new Error(
      `"{${body}}" is no number in question text. Write {= engine-key}, or a quantity and a value such as {pressure 600}. Quantities: ${quantityNames.join(', ')}.`,
    );
  }
  return printBoth(value, quantity);
}
