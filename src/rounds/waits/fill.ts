/** Puts what waits into its lines. Fetched once the page is drawn, and only where something may wait. */
import { readAnswers } from '../../storage/answers.ts';
import { planKeeper } from '../../storage/plan.ts';
import { underWayKeeper } from '../../storage/rehearsals.ts';
import { visitKeeper } from '../../storage/visits.ts';
import { kinds, whatWaits } from './what.ts';

export async function fill(box: HTMLElement): Promise<void> {
  const waiting = whatWaits({
    plan: planKeeper().read().data,
    underWay: underWayKeeper().read().data,
    visits: visitKeeper().read().data,
    read: await readAnswers(),
    now: Date.now(),
    minutesWest: (at) => new Date(at).getTimezoneOffset(),
    titles: JSON.parse(box.dataset['titles'] ?? '{}') as Record<string, string>,
  });
  for (const kind of kinds) {
    const link = box.querySelector<HTMLAnchorElement>(`[data-wait=${kind}]`);
    const line = waiting[kind];
    if (link === null) continue;
    link.hidden = line === undefined;
    if (line === undefined) continue;
    if (line.href !== undefined) link.href = line.href;
    const [what, press] = link.children;
    if (what) what.textContent = line.what;
    if (press) press.textContent = line.press;
  }
}
