// Shows on the home and course pages what this device remembers: where one was, and what is done.
import { progressKeeper } from '../../storage/progress.ts';
import { carryOn, type CourseLesson } from './carry-on.ts';
import { words } from './words.en.ts';

const progress = progressKeeper();
const box = document.querySelector<HTMLElement>('#carry-on');
const lessons = JSON.parse(box?.dataset['lessons'] ?? '[]') as CourseLesson[];

function sentence(status: string, done: number): string {
  const { notKept } = words;
  if (status in notKept) return notKept[status as keyof typeof notKept];
  if (done === 0) return words.noneDone;
  return words.someDone(String(done), String(lessons.length));
}

function show(): void {
  const { data, status } = progress.read();
  const offer = carryOn(lessons, data);
  const link = box?.querySelector('a');
  const about = box?.querySelector('span');
  if (offer !== null && link && about) {
    link.href = offer.href;
    link.textContent = offer.button;
    about.textContent = offer.about;
  }
  for (const mark of document.querySelectorAll<HTMLElement>('[data-lesson]')) {
    mark.classList.toggle('is-done', data.done.includes(mark.dataset['lesson'] ?? ''));
  }
  const says = document.querySelector<HTMLElement>('#progress-says');
  const done = lessons.filter(({ id }) => data.done.includes(id)).length;
  if (says !== null) says.textContent = sentence(status, done);
}

show();
progress.watch(show);
// A page taken from the browser's memory on "back" has not run again.
addEventListener('pageshow', ({ persisted }) => {
  if (persisted) show();
});
