// Marks a lesson as done on this device. The button is shown only once it works.
import { progressKeeper } from '../storage/progress.ts';

const progress = progressKeeper();
const id = document.querySelector<HTMLElement>('article[data-lesson]')?.dataset.lesson;
const button = document.querySelector<HTMLButtonElement>('#lesson-done');
const says = document.querySelector<HTMLElement>('#lesson-done-says');

const sentences = {
  ok: '',
  full: 'This browser has no room left to remember it.',
  blocked: 'This browser keeps nothing for this site, so it cannot be remembered.',
  newer: 'A newer version of this site wrote your progress. Reload the page, then try again.',
};

function show(done: boolean): void {
  if (button === null) return;
  button.setAttribute('aria-pressed', String(done));
  button.textContent = done ? 'Done. Undo' : 'Mark as done';
}

if (id !== undefined && button !== null && says !== null) {
  const isDone = (): boolean => progress.read().data.done.includes(id);
  progress.update((kept) => ({ ...kept, last: id }));
  show(isDone());
  button.hidden = false;
  button.addEventListener('click', () => {
    const wanted = !isDone();
    const others = (done: readonly string[]) => done.filter((other) => other !== id);
    const status = progress.update((kept) => ({
      ...kept,
      done: wanted ? [...others(kept.done), id] : others(kept.done),
    }));
    says.textContent = sentences[status];
    if (status === 'ok') show(wanted);
  });
  progress.watch(() => show(isDone()));
}
