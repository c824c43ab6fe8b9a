// Follows an old link to where its place stands now. What a copied link says of a simulation goes along.
function follow(): void {
  const was = document.getElementById(location.hash.slice(1));
  // Where the whole page has moved, a place that nobody thought of leads to the lesson.
  const link =
    was?.closest('.moved > li')?.querySelector('a') ??
    document.querySelector<HTMLAnchorElement>('.moved[data-whole] > #page a');
  // In place of the old address, so that Back leads to where the reader came from.
  if (link) location.replace(link.pathname + location.search + link.hash);
}

follow();
addEventListener('hashchange', follow);
