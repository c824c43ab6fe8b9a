// Builds the list of what was found, from our own elements.
import { words as says } from './found-words.en.ts';
import type { Found, Page, Section } from './search-index.ts';
import { sameWord, type Kind } from './search-lookup.ts';
import { pieces } from './search-words.ts';

/** At once, by kind; the rest at a press. */
const firstFew: Record<Kind, number> = { lesson: 8, glossary: 5, other: 5 };
const sectionsShown = 4;

function element<K extends keyof HTMLElementTagNameMap>(
  name: K,
  inside: readonly (Node | string)[] = [],
  className = '',
): HTMLElementTagNameMap[K] {
  const made = document.createElement(name);
  if (className !== '') made.className = className;
  made.append(...inside);
  return made;
}

function link(title: string, url: string): HTMLAnchorElement {
  const made = element('a', [title]);
  // An index may be older than the site; it still must not lead off it.
  made.href = new URL(url, location.origin).pathname + new URL(url, location.origin).hash;
  return made;
}

const excerptOf = (section: Section): HTMLParagraphElement =>
  element('p', [
    '… ',
    ...pieces(section.excerpt).map(({ text, marked }) => (marked ? element('mark', [text]) : text)),
    ' …',
  ]);

function pageItem(page: Page): HTMLLIElement {
  const head = element('h3', [link(page.title, page.url)]);
  if (page.sections.length === 0) return element('li', [head, excerptOf(page)]);
  const sections = page.sections
    .slice(0, sectionsShown)
    .map((section) =>
      element('li', [element('h4', [link(section.title, section.url)]), excerptOf(section)]),
    );
  const more = page.sections.length - sectionsShown;
  return element('li', [
    head,
    element('ul', sections, 'found-sections'),
    ...(more > 0 ? [element('p', [says.moreSections(more)], 'muted')] : []),
  ]);
}

async function group(
  { kind, pages, few = firstFew[kind] }: Found,
  words: string,
): Promise<HTMLElement> {
  const list = element('ul', [], 'found');
  const show = async (from: number, to: number): Promise<void> => {
    const loaded = await Promise.all(pages.slice(from, to).map((load) => load()));
    // Short entries tie, and "piston" would come after "piston seal".
    const named = (page: Page): number => Number(sameWord(page.title, words));
    list.append(...loaded.sort((a, b) => named(b) - named(a)).map(pageItem));
  };
  await show(0, few);
  const head = element('h2', [says.kinds[kind]]);
  head.id = `found-${kind}`;
  const section = element('section', [head, list], 'sheet-section');
  section.setAttribute('aria-labelledby', head.id);
  if (pages.length > few) {
    const more = element('button', [says.showAll(pages.length)]);
    more.type = 'button';
    more.addEventListener('click', () => {
      more.disabled = true;
      const next = list.childElementCount;
      show(few, pages.length).then(
        () => {
          more.parentElement?.remove();
          list.children[next]?.querySelector('a')?.focus();
        },
        () => {
          more.disabled = false;
          more.textContent = says.restNotLoaded;
        },
      );
    });
    section.append(element('p', [more]));
  }
  return section;
}

/** One section of the page for each kind that has something. */
export const resultsOf = (found: readonly Found[], words: string): Promise<HTMLElement[]> =>
  Promise.all(found.filter(({ pages }) => pages.length > 0).map((one) => group(one, words)));

export { element };
