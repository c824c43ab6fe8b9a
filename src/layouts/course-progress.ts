// Shows on the course page what this device remembers: lessons done, and the one opened last.
import { progressKeeper } from '../storage/progress.ts';

const progress = progressKeeper();

function show(): void {
  const { done, last } = progress.read().data;
  for (const lesson of document.querySelectorAll<HTMLElement>('.path-lesson')) {
    const { lesson: id = '' } = lesson.dataset;
    const mark = lesson.querySelector<HTMLElement>('.done');
    if (mark !== null) mark.hidden = !done.includes(id);
    const link = lesson.querySelector('a');
    const box = document.querySelector<HTMLElement>('#carry-on');
    const carryOn = box?.querySelector('a');
    if (id !== last || link === null || box === null || carryOn === null || carryOn === undefined)
      continue;
    box.hidden = false;
    carryOn.href = link.href;
    carryOn.textContent = `Carry on: ${link.textContent}`;
  }
}

show();
progress.watch(show);
