/** What the page shows, as it stands behind the # of its address: so Back, Forward and a reload come to the same. */
export type View =
  | { readonly at: 'before' }
  | { readonly at: 'question' }
  | { readonly at: 'all' }
  /** `begun` is the name of a rehearsal. */
  | { readonly at: 'result'; readonly begun: number };

export const BEFORE: View = { at: 'before' };

/** @example readView('#result-17') // { at: 'result', begun: 17 } */
export function readView(hash: string): View {
  const result = /^#result-(\d{1,15})$/u.exec(hash)?.[1];
  if (result !== undefined) return { at: 'result', begun: Number(result) };
  if (hash === '#question') return { at: 'question' };
  return hash === '#all' ? { at: 'all' } : BEFORE;
}

/** @example hashOf({ at: 'result', begun: 17 }) // '#result-17' */
export function hashOf(view: View): string {
  if (view.at === 'result') return `#result-${view.begun}`;
  return view.at === 'before' ? '' : `#${view.at}`;
}
