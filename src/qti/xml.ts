/** A few looks into a tree of XML. */
import type { Element, Root, RootContent } from 'xast';
import { Refusal } from './refusal.ts';
import { words } from './words.en.ts';

export const textOf = (node: RootContent): string =>
  node.type === 'text' ? node.value : 'children' in node ? node.children.map(textOf).join('') : '';

/** All elements of this name below, in order. */
export const all = (node: Element | Root, name: string): Element[] =>
  node.children.flatMap((child) =>
    child.type !== 'element'
      ? []
      : child.name === name
        ? [child, ...all(child, name)]
        : all(child, name),
  );

export function one(node: Element | Root, name: string): Element {
  const [found] = all(node, name);
  if (found === undefined) throw new Refusal(lacks(name));
  return found;
}

export function classed(node: Element, name: string, of: string): Element {
  const found = all(node, name).find((element) => element.attributes['class'] === of);
  if (found === undefined) throw new Refusal(lacks(`${name} of the class ${of}`));
  return found;
}

export const maybe = (element: Element, name: string): string | undefined =>
  element.attributes[name] ?? undefined;

export function attribute(element: Element, name: string): string {
  const value = maybe(element, name);
  if (value === undefined) throw new Refusal(lacks(`${name} of ${element.name}`));
  return value;
}

/** What an attribute holds as JSON; null if it is none, which no question has. */
export function jsonIn(element: Element, name: string): unknown {
  const text = attribute(element, name);
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

const lacks = (what: string): string => words.refused.part({ file: 'A file', what });
