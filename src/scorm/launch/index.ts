/** The page that a platform opens: the course in a frame, and beside it what reports to the platform, if there is one. */
import { progressKeeper } from '../../storage/progress.ts';
import { findApi } from './find-api.ts';
import { entriesKept, rightIn } from './kept.ts';
import { inPackage } from './links.ts';
import { openReport } from './report.ts';
import type { Bank, Standing } from './standing.ts';

/** How often it is looked whether something has changed [ms]. */
const LOOK_MS = 1000;

const frame = document.querySelector('iframe');
const api = findApi(window);
if (frame !== null) {
  if (api !== undefined) await report().catch((error: unknown) => console.warn(error));
  frame.addEventListener('load', () => mendLinks(frame));
  frame.src = frame.dataset['src'] ?? '';
}

async function report(): Promise<void> {
  if (api === undefined) return;
  const bank = (await (await fetch('site/questions/index.json')).json()) as Bank;
  const visit = openReport(api, bank, Date.now);
  if (!visit.open) return;
  const keeper = progressKeeper();
  // Somebody else may have sat at this device: what the platform has is the learner's own.
  keeper.update((kept) => ({ ...kept, done: [...visit.start.done] }));
  const from = (await entriesKept()).length;

  const look = async (): Promise<void> => {
    const right = new Map([...visit.start.right, ...rightIn(await entriesKept(), from)]);
    const standing: Standing = { done: new Set(keeper.read().data.done), right };
    visit.tell(standing);
  };
  await look();
  const looking = setInterval(() => void look(), LOOK_MS);
  addEventListener('pagehide', () => {
    clearInterval(looking);
    visit.finish();
  });
}

/** Most links were made right with the package; those of the search come out of its index. */
function mendLinks({ contentDocument }: HTMLIFrameElement): void {
  const root = new URL('site/', location.href).href;
  const mend = (event: Event): void => {
    const link = (event.target as Element | null)?.closest('a');
    // One in a drawing has an object there, and leads right.
    const right =
      typeof link?.href === 'string' && link.href !== '' ? inPackage(link.href, root) : undefined;
    if (link && right !== undefined) link.href = right;
  };
  // Before whatever else the press does, with a key or without.
  for (const kind of ['click', 'auxclick']) contentDocument?.addEventListener(kind, mend, true);
}
