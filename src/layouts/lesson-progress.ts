// Remembers on this device where the reader is, and marks the lesson as done. The button is shown
// only once it works.
import { inTurn } from '../storage/in-turn.ts';
import { progressKeeper, type Progress } from '../storage/progress.ts';
import { isLookedUp } from './course-progress/looked-up.ts';

const FRESH_MS = 1000;

const progress = progressKeeper();
const id = document.querySelector<HTMLElement>('article[data-lesson]')?.dataset.lesson;
const button = document.querySelector<HTMLButtonElement>('#lesson-done');
const says = document.querySelector<HTMLElement>('#lesson-done-says');

/** As the page has it; all words of this script come from LessonFrame.astro. */
const notDone = button?.textContent;

function show(done: boolean): void {
  if (button === null) return;
  button.toggleAttribute('data-done', done);
  button.textContent = (done ? button.dataset['undo'] : notDone) ?? '';
}

/** The last section whose heading has passed the upper half of the screen; null at the top. */
function sectionInSight(): { id: string; title: string } | null {
  const passed = [...document.querySelectorAll<HTMLElement>('.lesson h2[id]')].filter((heading) => {
    const { top, height } = heading.getBoundingClientRect();
    // Without height: covered while the questions run.
    return height > 0 && top < innerHeight / 2;
  });
  const last = passed.at(-1);
  // At the objectives nobody has read anything yet.
  if (scrollY === 0 || last === undefined || last.id === 'objectives') return null;
  return { id: last.id, title: last.textContent.trim() };
}

if (id !== undefined && button !== null && says !== null) {
  const isDone = (): boolean => progress.read().data.done.includes(id);
  const lookedUp = isLookedUp(location.href, document.referrer);
  const staysIn = ({ last }: Progress): boolean => lookedUp && last !== null && last.lesson !== id;
  // Opening it again keeps the section: one look at the top is not a new start. A word that is looked up in another
  // lesson does not take the bookmark out of the one that is being read.
  progress.update((kept) =>
    kept.last?.lesson === id || staysIn(kept)
      ? kept
      : { ...kept, last: { lesson: id, section: null } },
  );
  // Only when the page goes out of sight: a write for each scroll would wear on a slow phone.
  const remember = (): void => {
    const section = sectionInSight();
    if (section === null) return;
    progress.update((kept) => (staysIn(kept) ? kept : { ...kept, last: { lesson: id, section } }));
  };
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') remember();
  });
  addEventListener('pagehide', remember);
  show(isDone());
  button.hidden = false;
  /** What was pressed a moment ago. */
  let fresh: boolean | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const mark = (wanted: boolean): void => {
    const status = progress.update((kept) => {
      const others = kept.done.filter((other) => other !== id);
      return { ...kept, done: wanted ? [...others, id] : others };
    });
    says.textContent = says.dataset[status] ?? '';
    if (status === 'ok') show(wanted);
  };
  button.addEventListener('click', () => {
    const wanted = !isDone();
    fresh = wanted;
    clearTimeout(timer);
    timer = setTimeout(() => (fresh = undefined), FRESH_MS);
    // At once, without waiting for a turn: the next press may lead to another page.
    mark(wanted);
  });
  progress.watch(() => {
    void inTurn('hot-clutch:progress', () => {
      // Nobody changes tabs and presses there so soon: that tab wrote before it had seen this mark.
      if (fresh === undefined || isDone() === fresh) show(isDone());
      else mark(fresh);
    });
  });
}
