import type { Element } from 'xast';

/** What differs between items by kind; the rest of an item is the same for all. */
export interface Parts {
  readonly declaration: Element;
  readonly body: readonly Element[];
  readonly processing: Element;
  readonly feedback: readonly Element[];
}
