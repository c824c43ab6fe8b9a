/** A link of this site that somebody pasted, as a scene. */
import { readStateLink } from './state-link.ts';

export type Pasted =
  | { readonly kind: 'simulation'; readonly href: string }
  | { readonly kind: 'case'; readonly search: string }
  /** `none`: no link. `elsewhere`: of another site. `page`: of this site, but no state and no case. */
  | { readonly kind: 'none' | 'elsewhere' | 'page' };

/** @param site where this site stands, as https://example.org/ */
export function readPasted(text: string, site: string): Pasted {
  let url: URL;
  try {
    // Anything else would be read as a page of this site.
    if (!/^(?:https?:|\/)\S*$/i.test(text.trim())) return { kind: 'none' };
    url = new URL(text.trim(), site);
  } catch {
    return { kind: 'none' };
  }
  const { origin, pathname } = new URL(site);
  if (url.origin !== origin || !url.pathname.startsWith(pathname)) return { kind: 'elsewhere' };
  const path = url.pathname.slice(pathname.length);
  if (path === 'practise/case/' && /^\?[\w=&.-]+$/.test(url.search))
    return { kind: 'case', search: url.search };
  // A link may carry other simulations of its page as well; the one it opens at counts.
  const id = url.hash.slice(1);
  const state = new URLSearchParams(url.search).get(id);
  const href = `/${path}?${id}=${state ?? ''}#${id}`;
  return readStateLink(href) ? { kind: 'simulation', href } : { kind: 'page' };
}
