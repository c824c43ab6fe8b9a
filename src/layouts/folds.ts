// Opens the folds round the place that a link leads to. Some browsers do so by themselves, not all, and a fold is where a
// search or a colleague's link may lead.
function openRound(): void {
  const place = document.querySelector(':target');
  let fold = place?.closest('details');
  if (!fold) return;
  for (; fold; fold = fold.parentElement?.closest('details')) fold.open = true;
  place?.scrollIntoView();
}

openRound();
addEventListener('hashchange', openRound);
