// The search page: the words in its address, what was found below, the keyboard between them.
import './search-policy.ts';
import { linkedParts } from '../language/links.ts';
import { words as says } from './found-words.en.ts';
import { addressFor, tidy, wordsIn } from './search-address.ts';
import { find } from './search-index.ts';
import type { Looked } from './search-lookup.ts';
import { element, resultsOf } from './search-results.ts';
import {
  countSentence,
  putRight,
  searched,
  singleWords,
  unitHint,
  type Counts,
} from './search-words.ts';

const root = document.documentElement;
const form = document.querySelector<HTMLFormElement>('#search-form');
const field = document.querySelector<HTMLInputElement>('#search-words');
const status = document.querySelector<HTMLElement>('#search-says');
const results = document.querySelector<HTMLElement>('#search-results');
const help = document.querySelector<HTMLElement>('#search-help');

const pause = 250;
/** Counts searches, so that a slow answer to an old one is dropped. */
let asked = 0;

const system = (): 'us' | 'si' => (root.dataset.units === 'si' ? 'si' : 'us');

function anchor(text: string, href: string): HTMLAnchorElement {
  const made = element('a', [text]);
  made.href = href;
  return made;
}

const listsSentence = (): HTMLParagraphElement =>
  element(
    'p',
    linkedParts(says.listed).map(({ text, to }) =>
      to === undefined ? text : anchor(text, `../${to}/`),
    ),
  );

/** The sentence, with a link to each of the words in the place of its own. */
const listed = (sentence: string, words: readonly string[]): (Node | string)[] => {
  const links = words.flatMap((word, index) => [
    ...(index > 0 ? [', '] : []),
    anchor(word, addressFor(word)),
  ]);
  return linkedParts(sentence).flatMap(({ text, to }) => (to === undefined ? [text] : links));
};

/** The search put right as a whole, or words of the site that begin as one does that is nowhere. */
function close(looked: readonly Looked[]): (Node | string)[] {
  const right = putRight(looked);
  if (right !== null) return [' ', ...listed(says.didYouMean, [right])];
  const words = [...new Set(looked.flatMap((one) => one.close))];
  return words.length === 0 ? [] : [' ', ...listed(says.close, words)];
}

function nothingFound(words: string, looked: readonly Looked[]): Node[] {
  const hint = unitHint(words, system());
  const single = singleWords(looked);
  return [
    ...(hint === null ? [] : [element('p', [hint])]),
    element('p', [says.tryPlain]),
    ...(single.length === 0 ? [] : [element('p', listed(says.single, single))]),
    listsSentence(),
  ];
}

function notLoaded(words: string): Node[] {
  const again = element('button', [says.again]);
  again.type = 'button';
  again.addEventListener('click', () => void show(words));
  return [element('p', [says.offline]), element('p', [again]), listsSentence()];
}

async function show(words: string): Promise<void> {
  if (status === null || results === null || help === null) return;
  const mine = (asked += 1);
  const put = (
    sentence: readonly (Node | string)[],
    lists: readonly Node[],
    helps: readonly Node[],
  ): void => {
    status.replaceChildren(...sentence);
    results.replaceChildren(...lists);
    results.hidden = lists.length === 0;
    help.replaceChildren(...helps);
    help.hidden = helps.length === 0;
  };
  document.title = says.pageTitle(words);
  if (words === '') {
    put([], [], []);
    return;
  }
  if (results.childElementCount === 0) status.textContent = says.searching;
  try {
    const { looked, called, found } = await find(words, system());
    const lists = await resultsOf(found, searched(looked));
    if (mine !== asked) return;
    const counts = Object.fromEntries(
      found.map(({ kind, pages }) => [kind, pages.length]),
    ) as unknown as Counts;
    put(
      [countSentence(words, counts, looked, called), ...close(looked)],
      lists,
      lists.length === 0 ? nothingFound(words, looked) : [],
    );
  } catch {
    if (mine === asked) put([says.notLoaded], [], notLoaded(words));
  }
}

/** Down and up walk the results and come back to the field. */
function walk(event: KeyboardEvent): void {
  const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
  if (step === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
  const stops = [field, ...(results?.querySelectorAll<HTMLElement>('a, button') ?? [])];
  const here = stops.indexOf(document.activeElement as HTMLInputElement);
  const next = here < 0 ? undefined : stops[here + step];
  if (!next) return;
  event.preventDefault();
  next.focus();
}

if (form !== null && field !== null) {
  // It would have said that this script has not come.
  document.querySelector('.not-awake')?.remove();
  let timer = 0;
  // Words typed before this script ran win over those of the address.
  if (field.value === '') field.value = wordsIn(location.search);
  void show(tidy(field.value));

  field.addEventListener('input', () => {
    clearTimeout(timer);
    timer = window.setTimeout(() => {
      const words = tidy(field.value);
      history.replaceState(null, '', addressFor(words));
      void show(words);
    }, pause);
  });
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    clearTimeout(timer);
    const words = tidy(field.value);
    if (words !== wordsIn(location.search)) history.pushState(null, '', addressFor(words));
    void show(words);
    // The keys of a phone would cover what was found.
    if (matchMedia('(hover: none)').matches) field.blur();
  });
  addEventListener('popstate', () => {
    field.value = wordsIn(location.search);
    void show(field.value);
  });
  document.addEventListener('keydown', walk);
  // The excerpts print numbers in the system that is shown.
  new MutationObserver(() => void show(tidy(field.value))).observe(root, {
    attributeFilter: ['data-units'],
  });
}
