// The glossary narrowed to the terms that go by what is typed. What is typed stands in the address of the page as well, so
// that the way back from a lesson leads to the same terms.
import { squeezed } from '../../language/squeezed.ts';
import { asked, tidy, wordsIn } from '../search-address.ts';
import { goesBy, namesOf } from './goes-by.ts';
import { words as says } from './words.en.ts';

/** What shows of a group of things, by `is-out` and not by `hidden`: on paper all of them stand. */
const keep = (one: Element | null | undefined, kept: boolean): void =>
  void one?.classList.toggle('is-out', !kept);

const textsIn = (entry: Element, selector: string): string[] =>
  (entry.querySelector(selector)?.textContent ?? '').split(', ');

const form = document.querySelector<HTMLFormElement>('#find');
const field = document.querySelector<HTMLInputElement>('#find-term');
const clear = document.querySelector<HTMLButtonElement>('#find-clear');
const found = document.querySelector<HTMLElement>('#found-terms');
const [told, elsewhere] = document.querySelectorAll<HTMLElement>('#find-says > p');
const search = elsewhere?.querySelector('a');

const letters = [...document.querySelectorAll('.under-letter')].map((part) => ({
  part,
  link: document.querySelector(`.letters a[href="#${part.querySelector('h2')?.id ?? ''}"]`),
  entries: [...part.querySelectorAll('.entries > div')].map((entry) => ({
    entry,
    names: namesOf([...textsIn(entry, 'dt'), ...textsIn(entry, '.also')]),
  })),
}));
const all = letters.reduce((sum, { entries }) => sum + entries.length, 0);

/** Once the typing rests: an ear is not to hear every letter, and `src/ui` would bring 17 kB of simulations. */
const rest = 500;
let timer = 0;
function tell(sentence: string, none: boolean): void {
  clearTimeout(timer);
  timer = window.setTimeout(() => {
    if (told !== undefined) told.textContent = sentence;
    if (elsewhere !== undefined) elsewhere.hidden = !none;
  }, rest);
}

function narrow(typed: string): void {
  const whole = squeezed(typed) === '';
  let left = 0;
  for (const { part, link, entries } of letters) {
    const before = left;
    for (const { entry, names } of entries) {
      const fits = goesBy(names, typed);
      keep(entry, fits);
      left += Number(fits);
    }
    keep(part, left > before);
    keep(link, left > before);
  }
  if (clear !== null) clear.hidden = typed === '';
  found?.parentElement?.classList.toggle('is-narrowed', !whole);
  search?.setAttribute('href', `${search.pathname}${asked(typed)}`);
  if (left === 0) tell(says.none(typed), true);
  else if (whole) tell(told?.textContent === '' ? '' : says.all(String(all)), false);
  else tell(says.left({ left: String(left), all: String(all) }), false);
}

const here = (typed: string, hash = ''): void =>
  history.replaceState(null, '', `${location.pathname}${asked(typed)}${hash}`);

/** What is left may have come to stand above the window, or below its middle, which the keys of a phone cover. */
function bringInSight(): void {
  const top = found?.getBoundingClientRect().top ?? 0;
  const low = 0.6 * (visualViewport?.height ?? innerHeight);
  const bar = form?.getBoundingClientRect().bottom ?? 0;
  if (top < bar || top > low) found?.scrollIntoView();
}

/** As the address says: words to narrow by, and an entry that must be in sight whatever they are. */
function arrive(): void {
  if (field === null) return;
  const target = document.getElementById(location.hash.slice(1));
  narrow(tidy(field.value));
  if (target === null || target.closest('.is-out') === null) return;
  field.value = '';
  narrow('');
  here('', location.hash);
  target.scrollIntoView();
}

function typedAnew(): void {
  const typed = tidy(field?.value ?? '');
  narrow(typed);
  bringInSight();
  here(typed);
}

function empty(): void {
  if (field === null) return;
  field.value = '';
  typedAnew();
  field.focus();
}

if (form !== null && field !== null) {
  // It would have said that this script has not come.
  document.querySelector('.not-awake')?.remove();
  // Words typed before this script ran win over those of the address.
  if (field.value === '') field.value = wordsIn(location.search);
  arrive();
  field.addEventListener('input', typedAnew);
  field.addEventListener('keydown', (event) => {
    if (event.key !== 'Escape' || field.value === '') return;
    event.preventDefault();
    empty();
  });
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    // The keys of a phone would cover what is left.
    if (matchMedia('(hover: none)').matches) field.blur();
  });
  clear?.addEventListener('click', empty);
  addEventListener('popstate', () => {
    field.value = wordsIn(location.search);
    arrive();
  });
}
