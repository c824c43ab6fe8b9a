/** The rehearsal under way and those that were handed in, as this page has them and as they lie on the device. */
import { signal } from '@preact/signals';
import type { RetrievalAnswer } from '../../storage/answer.ts';
import type { Keeper, WriteStatus } from '../../storage/envelope.ts';
import type { AnswersRead } from '../../storage/read-answers.ts';
import {
  withPast,
  type Past,
  type Rehearsal,
  type RehearsalItem,
  type UnderWay,
} from '../../storage/rehearsals.ts';
import { logAnswers } from './log-answers.ts';

export interface Device {
  readonly now: () => number;
  readonly underWay: Pick<Keeper<UnderWay>, 'read' | 'update'>;
  readonly pasts: Pick<Keeper<Past>, 'read' | 'update'>;
  readonly readAnswers: () => Promise<AnswersRead>;
  /** True if it is kept. */
  readonly keepAnswer: (answer: RetrievalAnswer) => Promise<boolean>;
}

/** A tab that hands in is done with the log by then [ms]; until then no other tab sees to it. */
const LOGGING_MS = 30_000;

const open = (one: Rehearsal | null | undefined): Rehearsal | undefined =>
  one?.ended === null ? one : undefined;

/** @param gone the rehearsal under way is no longer: another tab has handed it in, or given it up */
export function keeping(device: Device, gone: () => void) {
  const rehearsal = signal<Rehearsal | undefined>(undefined);
  const past = signal<readonly Rehearsal[]>([]);
  const dropped = signal<Rehearsal | undefined>(undefined);
  const notKept = signal<Exclude<WriteStatus, 'ok'> | undefined>(undefined);
  /** What the clock has run, of the rehearsal under way [s]. */
  const seconds = signal(0);

  function tell(status: WriteStatus): void {
    notKept.value = status === 'ok' ? undefined : status;
  }
  function take(one: Rehearsal | undefined): void {
    rehearsal.value = one;
    seconds.value = one?.seconds ?? 0;
  }
  /** What lies there; one that was handed in and not yet filed counts as handed in. */
  function read(): Rehearsal | null {
    const { rehearsal: kept } = device.underWay.read().data;
    const filed = device.pasts.read().data;
    past.value = (kept === null || kept.ended === null ? filed : withPast(filed, kept)).rehearsals;
    return kept;
  }

  /**
   * A change to what lies in the store now, so that another tab's is built on and not undone; where the last one could not be
   * written, to what this page has.
   */
  function change(step: (one: Rehearsal) => Rehearsal): void {
    const mine = rehearsal.peek();
    if (mine === undefined) return;
    const unwritten = notKept.peek() !== undefined;
    const ran = Math.max(mine.seconds, seconds.peek());
    let changed = step({ ...mine, seconds: ran });
    const found = { gone: false };
    const status = device.underWay.update((kept) => {
      const there = kept.rehearsal;
      if (!unwritten) {
        found.gone = there?.begun !== mine.begun || there.ended !== null;
        if (found.gone || there === null) return kept;
        changed = step({ ...there, place: mine.place, seconds: Math.max(there.seconds, ran) });
      }
      return { rehearsal: changed };
    });
    if (found.gone) {
      take(open(read()));
      gone();
      return;
    }
    tell(status);
    rehearsal.value = changed;
  }

  /** Files a rehearsal with those that were handed in, then sees that its answers reach the log. */
  async function file(done: Rehearsal, fresh: boolean): Promise<void> {
    past.value = withPast({ rehearsals: past.peek() }, done).rehearsals;
    const status = device.pasts.update((kept) => withPast(kept, done));
    tell(status);
    if (status === 'ok') {
      device.underWay.update((kept) =>
        kept.rehearsal?.begun === done.begun ? { rehearsal: null } : kept,
      );
    }
    if (!(await logAnswers(done, device, fresh))) return;
    const logged = { ...done, logged: true };
    past.value = withPast({ rehearsals: past.peek() }, logged).rehearsals;
    device.pasts.update((kept) => withPast(kept, logged));
  }

  return {
    ...{ rehearsal, past, dropped, notKept, seconds, change },
    changeItem: (at: number, item: (one: RehearsalItem) => RehearsalItem): void =>
      change((one) => ({ ...one, items: one.items.map((it, i) => (i === at ? item(it) : it)) })),
    look: (): void => take(open(read())),
    /** Begins it, or takes up the one that another tab has begun meanwhile. */
    begin: (fresh: Rehearsal): void => {
      let begun = fresh;
      const status = device.underWay.update((kept) => {
        begun = open(kept.rehearsal) ?? fresh;
        return { rehearsal: begun };
      });
      tell(status);
      dropped.value = undefined;
      take(begun);
    },
    drop: (): void => {
      dropped.value = rehearsal.peek();
      take(undefined);
      device.underWay.update(() => ({ rehearsal: null }));
    },
    bringBack: (): void => {
      const back = dropped.peek();
      if (back === undefined) return;
      dropped.value = undefined;
      tell(device.underWay.update(() => ({ rehearsal: back })));
      take(back);
    },
    /** @returns the way to wait for the log; undefined if another tab was quicker */
    handIn: (items: readonly RehearsalItem[]): Promise<void> | undefined => {
      let done: Rehearsal | undefined;
      const begun = rehearsal.peek()?.begun;
      change((one) => (done = { ...one, items, ended: device.now() }));
      if (done === undefined || rehearsal.peek()?.begun !== begun) return undefined;
      take(undefined);
      return file(done, true);
    },
    /** Sees to what a device has left that died while it handed in. */
    finish: async (): Promise<void> => {
      const before = device.now() - LOGGING_MS;
      for (const one of past.peek()) {
        if (!one.logged && one.ended !== null && one.ended < before) await file(one, false);
      }
    },
    /** Another tab has written. */
    heard: (): void => {
      const mine = rehearsal.peek();
      const there = open(read());
      // What could not be written is here alone.
      if (mine !== undefined && notKept.peek() !== undefined) return;
      if (mine === undefined) take(there);
      else if (there?.begun === mine.begun) rehearsal.value = { ...there, place: mine.place };
      else {
        take(there);
        gone();
      }
    },
  };
}

export type Keeping = ReturnType<typeof keeping>;
