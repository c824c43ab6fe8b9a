/**
 * Runs in the page: what is on show becomes plain markup that can stand in one document with other pages. No import may be
 * used inside `freeze`, since the browser gets its text alone.
 */
export interface FreezeGiven {
  readonly chapter: string;
  readonly fits: string;
}

export interface Frozen {
  readonly title: string;
  readonly html: string;
  /** The answers of its questions, as the items of a list. */
  readonly key: string;
  readonly styles: readonly string[];
  readonly headings: readonly { readonly id: string; readonly title: string }[];
  readonly ids: readonly string[];
}

export function freeze({ chapter, fits }: FreezeGiven): Frozen {
  const main = document.querySelector('main');
  if (main === null) throw new Error('The page has no <main>.');
  const all = (selector: string, within: ParentNode = main): HTMLElement[] => [
    ...within.querySelectorAll<HTMLElement>(selector),
  ];

  // A term is a link to its entry.
  for (const term of all('button.term')) {
    const link = document.createElement('a');
    const meaning = document.getElementById(term.getAttribute('popovertarget') ?? '');
    link.className = 'book-term';
    link.setAttribute('href', meaning?.querySelector('a')?.getAttribute('href') ?? '');
    link.append(...term.childNodes);
    term.replaceWith(link);
  }

  const key = all('.retrieval-plain > li').map((question, at) => {
    const answer = question.querySelector(':scope > details:last-child');
    answer?.querySelector('summary')?.remove();
    const lists = [...(answer?.querySelectorAll(':scope > ul') ?? [])];
    const [options] = lists;
    const letters = question.querySelector(':scope > ul, :scope > ol')?.children.length ?? 0;
    const right = [...(options?.children ?? [])].filter(
      (one) => one.querySelector('strong')?.textContent === fits,
    );
    for (const one of right) {
      const place = [...(options?.children ?? [])].indexOf(one);
      const mark = one.querySelector('strong');
      if (mark !== null) mark.textContent = `${String(place + 1)}.`;
    }
    // Of a choice the right ones; of an amount the amount; of everything else all of it.
    if (right.length > 0) options?.replaceChildren(...right);
    else if (letters === 0 && options !== undefined)
      options.replaceChildren(...[...options.children].slice(0, 1));
    const item = document.createElement('li');
    item.value = at + 1;
    item.append(...(answer?.childNodes ?? []));
    answer?.remove();
    return item;
  });

  // Behind the picture, which is kept on one page.
  for (const table of all('.sim-picture .data-table')) {
    const rows = document.createElement('div');
    rows.className = 'book-table';
    table.querySelector('summary')?.remove();
    rows.append(...table.childNodes);
    table.closest('.sim-bench')?.after(rows);
    table.remove();
  }

  const dropped =
    'script, style, template, noscript, .no-print, .facts > a, .term-meaning, [popover], .moved, .chart-pad, .retrieval-panel, .sim-controls, .sim-nav, .sim-below, .chart-grip';
  for (const one of all(dropped)) one.remove();
  // The other unit system, and whatever else is not on show.
  const hidden = all('*').filter(
    (one) => one instanceof HTMLElement && getComputedStyle(one).display === 'none',
  );
  for (const one of hidden) one.remove();
  for (const unit of key.flatMap((one) =>
    all(document.documentElement.dataset['units'] === 'us' ? '.u-si' : '.u-us', one),
  ))
    unit.remove();
  for (const island of all('astro-island, astro-slot')) island.replaceWith(...island.childNodes);

  const within = [main, ...key];
  const each = within.flatMap((root) => [root, ...root.querySelectorAll('*')]);
  const ids = each.flatMap(({ id }) => (id === '' || id === 'main' ? [] : [id]));
  const known = new Set(ids);
  const here = (id: string): string => (known.has(id) ? `${chapter}--${id}` : id);
  const lists = new Set(['aria-labelledby', 'aria-describedby', 'for', 'headers', 'aria-controls']);
  for (const one of each) {
    for (const { name, value } of [...one.attributes]) {
      if (name === 'id') one.id = here(value);
      else if (lists.has(name)) one.setAttribute(name, value.split(/\s+/u).map(here).join(' '));
      else if ((name === 'href' || name === 'xlink:href') && value.startsWith('#'))
        one.setAttribute(name, `#${here(value.slice(1))}`);
      else if (value.includes('url('))
        one.setAttribute(
          name,
          value.replace(/url\((["']?)#([^)"']+)\1\)/gu, (_, _q, id: string) => `url(#${here(id)})`),
        );
    }
  }
  const title = main.querySelector('h1');
  title?.setAttribute('id', chapter);
  const headings = all('h2').flatMap(({ id, textContent }) =>
    id === '' ? [] : [{ id, title: textContent.trim() }],
  );
  return {
    title: title?.textContent.trim() ?? '',
    html: main.innerHTML,
    key: key.map((one) => one.outerHTML).join('\n'),
    styles: [...document.styleSheets].map(({ cssRules }) =>
      [...cssRules].map(({ cssText }) => cssText).join('\n'),
    ),
    headings,
    ids: [...ids.map((id) => `${chapter}--${id}`), chapter],
  };
}
