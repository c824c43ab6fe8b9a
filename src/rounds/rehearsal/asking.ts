/** The question on show, and how each of the fifty stands. */
import { computed, effect, signal, untracked, type ReadonlySignal } from '@preact/signals';
import type { Asked, Varied } from '../../quiz/asked.ts';
import type { Standing } from '../../quiz/rehearsal/standing.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import type { Rehearsal, RehearsalItem } from '../../storage/rehearsals.ts';
import type { RetrievalModel } from '../../widgets/retrieval/model.ts';
import type { Miss } from '../load.ts';
import type { Keeping } from './keeping.ts';
import type * as Script from './script.ts';

/** What asks and grades: fetched when somebody begins. */
export type Play = typeof Script;

export interface Needs {
  /** Rejects if it cannot be had. */
  readonly loadPlay: () => Promise<Play>;
  /** What the page shows. */
  readonly units: ReadonlySignal<UnitSystem>;
  /** The folder that the site stands in. */
  readonly base: string;
}

export function asking(
  { rehearsal, change, changeItem }: Keeping,
  { loadPlay, units, base }: Needs,
) {
  const miss = signal<Miss | undefined>(undefined);
  const loading = signal(false);
  const play = signal<Play | undefined>(undefined);
  const questions = signal<ReadonlyMap<string, Varied>>(new Map());
  const player = signal<RetrievalModel | undefined>(undefined);
  const loaded = new Set<string>();
  let stopSaving: (() => void) | undefined;

  /** The question of one of its items; undefined while it is not here, and if it is gone from the site. */
  function askedOf(one: Rehearsal, item: RehearsalItem): Asked | undefined {
    const question = questions.value.get(item.id);
    return question && play.value?.askedIn(one, item, question);
  }

  const standings = computed<readonly Standing[]>(() => {
    const one = rehearsal.value;
    return (one?.items ?? []).map((item) => {
      const asked = one && askedOf(one, item);
      return (asked && play.value?.standingOf(asked, item)) ?? 'open';
    });
  });

  /** Fetches what asks, and the questions of some lessons. False if something did not come; `miss` says what. */
  async function need(items: readonly RehearsalItem[]): Promise<boolean> {
    const missing = [...new Set(items.map(({ lesson }) => lesson))].filter(
      (lesson) => !loaded.has(lesson),
    );
    miss.value = undefined;
    if (play.peek() !== undefined && missing.length === 0) return true;
    loading.value = true;
    play.value ??= await loadPlay().catch(() => undefined);
    const sets = await (play.peek()?.loadSets(base, missing) ?? { miss: 'stuck' as const });
    loading.value = false;
    if ('miss' in sets) {
      miss.value = sets.miss;
      return false;
    }
    for (const lesson of missing) loaded.add(lesson);
    const got = sets.got.flatMap((set) => set.questions.map((one) => [one.id, one] as const));
    questions.value = new Map([...questions.peek(), ...got]);
    return true;
  }

  /** Puts the question away; what was put down for it is kept. */
  function putAway(): void {
    stopSaving?.();
    stopSaving = undefined;
    player.value = undefined;
  }

  /** Puts a question on show, as it was left. */
  function goTo(place: number): void {
    putAway();
    change((one) => ({ ...one, place }));
    const now = rehearsal.peek();
    const item = now?.items[place];
    const script = play.peek();
    if (now === undefined || item === undefined || script === undefined) return;
    const asked = askedOf(now, item);
    if (asked === undefined) return;
    const made = script.retrievalModel([asked], undefined, 'all');
    made.start(now.begun + place);
    const shown = units.peek();
    made.putBack(item.given ?? made.given(shown), item.certainty, shown);
    player.value = made;
    stopSaving = effect(() => {
      const given = made.given(units.value);
      const put = {
        variant: asked.variant,
        given: script.isBlank(given) ? undefined : given,
        certainty: made.certainty.value,
      };
      untracked(() => {
        const { variant, given: was, certainty } = rehearsal.peek()?.items[place] ?? {};
        if (JSON.stringify({ variant, given: was, certainty }) === JSON.stringify(put)) return;
        changeItem(place, (one) => ({ ...one, ...put }));
      });
    });
  }

  /** False when the answer cannot stand like this: the question says what is missing. What was left open may be left. */
  function mayLeave(system: UnitSystem): boolean {
    const made = player.peek();
    const session = made?.session.peek();
    const script = play.peek();
    if (made === undefined || session === undefined || script === undefined) return false;
    const given = made.given(system);
    const certainty = made.certainty.peek();
    if (script.isBlank(given) && certainty === undefined) return true;
    const tried = script.answer(session, given, certainty);
    if (!tried.ok) made.complaint.value = { place: tried.missing, sentence: tried.sentence };
    return tried.ok;
  }

  /** The items with what came of each. */
  const graded = (one: Rehearsal): readonly RehearsalItem[] =>
    one.items.map((was) => {
      const asked = askedOf(one, was);
      const item = asked?.variant === undefined ? was : { ...was, variant: asked.variant };
      const { given, certainty } = item;
      if (asked === undefined || given === undefined || certainty === undefined) return item;
      const outcome = play.peek()?.gradedAgain(asked, given, certainty);
      const result = outcome?.ok === true && play.peek()?.resultOf(outcome.outcome);
      return result ? { ...item, result } : item;
    });

  return {
    miss,
    loading,
    play,
    questions,
    player,
    standings,
    askedOf,
    need,
    goTo,
    putAway,
    mayLeave,
    graded,
  };
}
