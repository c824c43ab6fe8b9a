// The page about use without internet: what is on this device, and the buttons that change it.
import { allowCopy, removeCopy } from '../storage/site-copy.ts';
import { finder, type Found } from './found.ts';
import { scope } from './registration.ts';
import { said } from './said.ts';
import { words } from './standing-words.en.ts';

/** Between two looks while files arrive [ms]. */
const LOOK_MS = 500;

const place = document.querySelector<HTMLElement>('#offline');
const status = document.querySelector<HTMLElement>('#offline-says');
const bar = document.querySelector<HTMLProgressElement>('#offline progress');
const store = document.querySelector<HTMLButtonElement>('#offline-store');
const keeping = document.querySelector<HTMLElement>('#offline-keeping');
const remove = document.querySelector<HTMLButtonElement>('#offline-remove');
const found = finder();

function show(now: Found): void {
  if (!place || !status || !bar || !store || !remove) return;
  const under = now.kind === 'storing' || now.kind === 'begun';
  place.dataset['state'] = now.kind;
  const sentence = said(now);
  if (status.textContent !== sentence) status.textContent = sentence;
  bar.hidden = !under;
  if ('standing' in now) {
    bar.max = now.standing.of;
    bar.value = now.standing.have;
  }
  store.hidden = !['off', 'broken', 'full', 'failed'].includes(now.kind);
  store.textContent = now.kind === 'off' ? words.store : words.again;
  remove.disabled = !('standing' in now);
  if (now.kind === 'ready') void showKeeping();
  else if (keeping) keeping.hidden = true;
}

async function look(): Promise<void> {
  const now = await found.look();
  show(now);
  // A failure is not the end where the start of the page tries on, nor is "ready" for good.
  setTimeout(() => void look(), now.kind === 'storing' ? LOOK_MS : 6 * LOOK_MS);
}

async function showKeeping(): Promise<void> {
  if (!keeping || keeping.dataset['asked'] !== undefined) return;
  const kept = await navigator.storage.persisted();
  const [sentence, button] = [keeping.querySelector('span'), keeping.querySelector('button')];
  if (!sentence || !button) return;
  keeping.hidden = false;
  sentence.textContent = kept ? words.kept : words.mayGo;
  button.hidden = kept;
  button.textContent = words.keepIt;
  button.onclick = () => {
    keeping.dataset['asked'] = '';
    void navigator.storage.persist().then((promised) => {
      sentence.textContent = promised ? words.kept : words.notKept;
      button.hidden = true;
    });
  };
}

store?.addEventListener('click', () => {
  show({ kind: 'begun' });
  void allowCopy(scope).then(() => found.again());
});
remove?.addEventListener('click', () => {
  void navigator.serviceWorker
    .getRegistration(scope)
    .then((registration) => registration?.unregister())
    .then(() => removeCopy(scope))
    .then(() => show({ kind: 'off' }));
});
void look();
