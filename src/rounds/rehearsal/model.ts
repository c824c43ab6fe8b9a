/** The state of the page "Rehearsal". Clock, storage and network are handed in, so it runs in Node. */
import { computed, signal } from '@preact/signals';
import type { BankIndex } from '../../quiz/bank-index.ts';
import { REHEARSAL_MINUTES } from '../../quiz/rehearsal/blueprint.ts';
import { drawRehearsal } from '../../quiz/rehearsal/draw.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import type { Rehearsal, RehearsalItem } from '../../storage/rehearsals.ts';
import type { Loaded } from '../load.ts';
import { asking, type Needs } from './asking.ts';
import { stopwatch } from './clock.ts';
import { keeping, type Device } from './keeping.ts';
import { BEFORE, type View } from './view.ts';

export interface Surroundings extends Device, Needs {
  readonly loadIndex: () => Promise<Loaded<BankIndex>>;
}

/** The clock is written down at least so often [s]. */
const WRITE_EVERY = 10;

/** How many rehearsals ago each question was asked, 1 the last. */
function latelyIn(past: readonly Rehearsal[]): ReadonlyMap<string, number> {
  const lately = new Map<string, number>();
  for (const [before, { items }] of past.entries()) {
    for (const { id } of items) if (!lately.has(id)) lately.set(id, before + 1);
  }
  return lately;
}

export function rehearsalModel(around: Surroundings) {
  const view = signal<View>(BEFORE);
  const index = signal<BankIndex | undefined>(undefined);
  /** Of the next rehearsal, and its name. */
  const seed = signal(around.now());
  const watch = stopwatch(around.now);
  const kept = keeping(around, () => {
    asks.putAway();
    view.value = BEFORE;
  });
  const asks = asking(kept, around);
  const { rehearsal, past, seconds } = kept;

  const next = computed(() =>
    drawRehearsal(index.value?.items ?? [], seed.value, latelyIn(past.value)),
  );
  const minutesLeft = computed(() => Math.ceil(REHEARSAL_MINUTES - seconds.value / 60));

  /** Writes the clock down, and lets it stand. */
  function rest(): void {
    watch.rest();
    if (seconds.peek() > (rehearsal.peek()?.seconds ?? 0)) kept.change((one) => one);
  }

  function drop(): void {
    asks.putAway();
    kept.drop();
    seed.value = around.now();
    view.value = BEFORE;
  }

  /** Questions that are gone from the site since are left out. */
  function withoutGone(): void {
    const now = rehearsal.peek();
    if (now === undefined) return;
    const { items, place } = now;
    const isThere = (item: RehearsalItem): boolean => asks.askedOf(now, item) !== undefined;
    const left = items.filter(isThere);
    if (left.length === items.length) return;
    if (left.length === 0) {
      drop();
      return;
    }
    const before = items.slice(0, place).filter(isThere).length;
    const at = Math.min(before, left.length - 1);
    asks.putAway();
    kept.change((one) => ({ ...one, place: at, items: one.items.filter(isThere) }));
    asks.goTo(at);
  }

  /** Puts a question on show, which may have to come first. */
  async function go(place: number): Promise<void> {
    const now = rehearsal.peek();
    const item = now?.items[place];
    if (now === undefined || item === undefined) return;
    const has = (): boolean => asks.askedOf(now, item) !== undefined;
    if (!has() && !(await asks.need([item]))) view.value = BEFORE;
    else if (has()) {
      asks.goTo(place);
      if (rehearsal.peek() !== undefined) view.value = { at: 'question' };
    }
  }

  async function showQuestions(to: View): Promise<void> {
    const { items, place } = rehearsal.peek() ?? { items: [], place: 0 };
    const isOn = (): boolean => asks.player.peek() !== undefined;
    if (items.length === 0) view.value = BEFORE;
    // Back from the list: everything is there already.
    else if (to.at === 'question' && isOn()) view.value = to;
    else {
      // The question is read while the others are on their way.
      if (to.at === 'question') await go(place);
      const came = await asks.need(items);
      if (came) withoutGone();
      if (to.at === 'question' && isOn()) return;
      if (came && !isOn()) asks.goTo(rehearsal.peek()?.place ?? 0);
      view.value = came && isOn() ? to : BEFORE;
    }
  }

  async function showResult(to: Extract<View, { at: 'result' }>): Promise<void> {
    const one = past.peek().find(({ begun }) => begun === to.begun);
    if (one === undefined) {
      view.value = BEFORE;
      return;
    }
    // The figures stand on their own; the explanations follow when the questions have come.
    const questionsCame = asks.need(one.items);
    if (asks.play.peek() === undefined) await questionsCame;
    view.value = asks.play.peek() === undefined ? BEFORE : to;
    await questionsCame;
  }

  /** Shows what the address says, as far as there is such a thing. */
  async function show(to: View): Promise<void> {
    if (to.at === 'before' || to.at === 'result') rest();
    if (to.at === 'before') view.value = to;
    else if (to.at === 'result') await showResult(to);
    else await showQuestions(to);
  }

  return {
    ...{ view, index, next, minutesLeft, seconds, rehearsal, past },
    ...{ dropped: kept.dropped, notKept: kept.notKept, heard: kept.heard },
    ...{ miss: asks.miss, loading: asks.loading, questions: asks.questions },
    askedOf: asks.askedOf,
    ...{ player: asks.player, standings: asks.standings },
    ...{ show, rest, drop },
    look: async (to: View = BEFORE): Promise<void> => {
      asks.miss.value = undefined;
      kept.look();
      const got = await around.loadIndex();
      if ('miss' in got) {
        asks.miss.value = got.miss;
        return;
      }
      index.value = got.got;
      await show(to);
      await kept.finish();
    },
    begin: async (): Promise<void> => {
      kept.begin({
        ...{ begun: seed.peek(), ended: null, seconds: 0, place: 0, logged: false },
        timed: past.peek()[0]?.timed ?? true,
        items: next.peek().map(({ id, lesson, area }) => ({ id, lesson, area })),
      });
      await show({ at: 'question' });
    },
    bringBack: kept.bringBack,
    goTo: (place: number): void => void go(place),
    /** To the next question, or to all of them after the last. False when the answer cannot stand like this. */
    onward: (system: UnitSystem): boolean => {
      const now = rehearsal.peek();
      if (now === undefined || !asks.mayLeave(system)) return false;
      if (now.place + 1 < now.items.length) void go(now.place + 1);
      else if (now.items.every(({ id }) => asks.questions.peek().has(id)))
        view.value = { at: 'all' };
      else void show({ at: 'all' });
      return true;
    },
    flag: (): void =>
      kept.changeItem(rehearsal.peek()?.place ?? 0, (one) => ({ ...one, flagged: !one.flagged })),
    switchClock: (): void => {
      watch.rest();
      kept.change((one) => ({ ...one, timed: !one.timed }));
    },
    /** Called each second while the page is in front. */
    tick: (): void => {
      const { at } = view.peek();
      const now = rehearsal.peek();
      if (now?.timed !== true || (at !== 'question' && at !== 'all')) {
        watch.rest();
        return;
      }
      seconds.value += watch.tick();
      if (seconds.peek() - now.seconds >= WRITE_EVERY) kept.change((one) => one);
    },
    handIn: async (): Promise<void> => {
      const one = rehearsal.peek();
      if (one === undefined) return;
      asks.putAway();
      rest();
      const logged = kept.handIn(asks.graded(rehearsal.peek() ?? one));
      seed.value = around.now();
      if (logged === undefined) return;
      await show({ at: 'result', begun: one.begun });
      await logged;
    },
  };
}

export type RehearsalModel = ReturnType<typeof rehearsalModel>;
