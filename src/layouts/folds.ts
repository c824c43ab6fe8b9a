// Opens the folds round the place that a link leads to. Some browsers do so by themselves, not all, and a fold is where a
// search or a colleague's link may lead.
function openRound(hash: string): void {
  const place = hash.length > 1 ? document.getElementById(decodeURIComponent(hash.slice(1))) : null;
  let fold = place?.closest('details') ?? null;
  if (place === null || fold === null) return;
  while (fold !== null) {
    fold.open = true;
    fold = fold.parentElement?.closest('details') ?? null;
  }
  place.scrollIntoView();
}

openRound(location.hash);
addEventListener('hashchange', () => openRound(location.hash));
