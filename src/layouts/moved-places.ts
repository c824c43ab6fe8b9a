// Follows an old link to where its place stands now. What a copied link says of a simulation goes along.
function follow(): void {
  const list = document.querySelector<HTMLElement>('.moved');
  const linkAt = (was: string) =>
    was === '' ? null : document.querySelector<HTMLAnchorElement>(`.moved > #${CSS.escape(was)} a`);
  // Where the whole page has moved, a place that nobody thought of leads to the lesson.
  const link =
    linkAt(decodeURIComponent(location.hash.slice(1))) ?? linkAt(list?.dataset['whole'] ?? '');
  if (link === null) return;
  const to = new URL(link.href);
  to.search = location.search;
  // In place of the old address, so that Back leads to where the reader came from.
  location.replace(to);
}

follow();
addEventListener('hashchange', follow);
