// Shows in the list of cases what this device remembers of each; and proposes a number that was not used yet.
import { MOST_SEED } from '../cases/made-key.ts';
import { visitKeeper, type Visit } from '../storage/visits.ts';
import { words } from './list-words.en.ts';

const { standing } = words;
const said = ({ ended, steps }: Visit): string => {
  if (ended === undefined) return steps.length > 0 ? standing.begun : '';
  return ended.verdict === 'solved'
    ? standing.solved({ minutes: String(ended.minutes) })
    : standing[ended.verdict];
};

const keeper = visitKeeper();
const show = (): void => {
  const { byCase } = keeper.read().data;
  for (const place of document.querySelectorAll<HTMLElement>('[data-case]')) {
    const visit = byCase[place.dataset['case'] ?? ''];
    place.textContent = visit === undefined ? '' : said(visit);
  }
};
show();
keeper.watch(show);
globalThis.addEventListener('pageshow', show);

const number = document.querySelector<HTMLInputElement>('#made-number');
if (number?.value === '1') number.value = String(1 + Math.floor(Math.random() * MOST_SEED));
