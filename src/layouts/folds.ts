// Opens the folds round the place that a link leads to. Some browsers do so by themselves, not all, and a fold is where a
// search or a colleague's link may lead.
function openRound(): void {
  // Not by :target, which no element is yet while the page loads.
  const place = document.getElementById(location.hash.slice(1));
  let fold = place?.closest('details');
  if (!fold) return;
  for (; fold; fold = fold.parentElement?.closest('details')) fold.open = true;
  place?.scrollIntoView();
}

openRound();
addEventListener('hashchange', openRound);
