import { batch, computed, effect, signal, type ReadonlySignal } from '@preact/signals';
import {
  ARRIVES,
  minutesFor,
  stateAfter,
  type CarState,
  type Grounds,
  type Fit,
  type Outcome,
  type TakenReading,
  type TwoFaults,
} from '../diagnosis/index.ts';
import type { Plant } from '../engine/index.ts';
import { makeForm } from './form-model.ts';
import type { Answer, Asked, Clashing, Listed, Proposal, Think } from './messages.ts';

/** Which transmission the planner reasons about. */
export interface Basis {
  readonly plant: Plant;
  readonly kind: 'training' | 'second' | 'own';
  /** Of a sheet of one's own: what it is called, and how many of its numbers were typed. */
  readonly own?: { readonly name: string; readonly yours: number; readonly of: number };
}

/** How the table stands that the planner is to reason by. */
export type TableIs = 'fetching' | 'ready' | 'noTable' | 'making' | 'faulty' | 'gone' | 'missed';

/** How the car stands after readings, and what they took [min]. */
function standing(readings: readonly TakenReading[], coldMorning: boolean) {
  let state: CarState = { ...ARRIVES, coldMorning };
  let minutes = 0;
  for (const { test } of readings) {
    minutes += minutesFor(test, state);
    state = stateAfter(test, state);
  }
  return { state, minutes };
}

/** What the planner says, and the readings that it says it to; `next` is empty while it is worked out. */
export interface Advice extends Listed {
  readonly of: Asked;
  readonly next: readonly Proposal[];
  readonly outcomes: readonly Outcome[];
  /** Whether two of the readings cannot both be right; null while it is worked out. */
  readonly clash: boolean | null;
  /** Null while it is worked out, and where the readings are too few to tell. */
  readonly two: TwoFaults | null;
}
type Of<Piece> = Piece & { readonly of: Asked };

const NONE: ReadonlySignal<readonly TakenReading[]> = signal([]);

/**
 * What the planner says to readings, which may be kept anywhere, and the form for the next one. It thinks elsewhere: what stands here
 * is the last it said, and an answer to readings that have changed since is not taken.
 */
export function makePlanner(
  readings: ReadonlySignal<readonly TakenReading[]>,
  think?: Think,
  /** After a repair. */
  after: ReadonlySignal<readonly TakenReading[]> = NONE,
) {
  /** The table of the transmission, as text; null until it is there. */
  const table = signal<string | null>(null);
  /** Until somebody brings a table there is none to come. */
  const tableIs = signal<TableIs>('missed');
  /** Null: the training transmission. */
  const basis = signal<Basis | null>(null);
  const coldMorning = signal(false);
  const stands = computed(() => standing(readings.value, coldMorning.value));
  const asked = signal<Asked | null>(null);
  const listed = signal<Of<Listed> | null>(null);
  const ranked = signal<Of<{ next: readonly Proposal[]; outcomes: readonly Outcome[] }> | null>(
    null,
  );
  const clashing = signal<Of<Clashing> | null>(null);
  const fits = signal<Of<{ fit: Fit; two: TwoFaults | null }> | null>(null);
  const grounds = signal<(Grounds & { readonly table: string }) | null>(null);
  const known = computed(() => (grounds.value?.table === table.value ? grounds.value : null));
  const lost = signal(false);
  const unreadable = signal('');
  let turn = 0;

  const told = (answer: Answer): void => {
    const of = asked.peek();
    if (answer.kind === 'lost') lost.value = true;
    if (of === null || !('turn' in answer) || answer.turn !== turn) return;
    batch(() => {
      if (answer.kind === 'listed') {
        listed.value = { ...answer.listed, of };
        if (answer.grounds) grounds.value = { ...answer.grounds, table: of.table };
      } else if (answer.kind === 'ranked') ranked.value = { ...answer, of };
      else if (answer.kind === 'fits') fits.value = { ...answer, of };
      else if (answer.kind === 'noTable') unreadable.value = of.table;
      else if (answer.kind === 'clashing') clashing.value = { ...answer.clashing, of };
    });
  };
  const works = think?.(told);
  const stop = effect(() => {
    const text = table.value;
    const next: Asked | null =
      text === null
        ? null
        : { table: text, readings: readings.value, after: after.value, state: stands.value.state };
    const before = asked.peek();
    if (before?.table !== text) {
      // Nothing that another transmission said may stand beside this one.
      batch(() => {
        [listed.value, ranked.value, clashing.value, fits.value] = [null, null, null, null];
      });
    }
    asked.value = next;
    if (next === null) return;
    turn += 1;
    works?.ask({ kind: 'think', turn, asked: next });
  });
  return {
    table,
    tableIs,
    basis,
    readings,
    coldMorning,
    form: makeForm(),
    stands,
    /** True while the list is still that of other readings. */
    weighing: computed(() => asked.value !== null && listed.value?.of !== asked.value),
    /** True while it is worked out which test tells most. */
    ranking: computed(() => asked.value !== null && ranked.value?.of !== asked.value),
    /** The planner did not come. */
    lost,
    /** The text that was given as a table and is none. */
    unreadable,
    /** The last that was found, of the readings before and after. */
    clashing,
    grounds: known,
    /** True until it is known what the transmission's tests read at all: a moment after its table is there. */
    awaited: computed(() => table.value !== null && known.value === null && !lost.value),
    advice: computed((): Advice | null => {
      const list = listed.value;
      if (list === null) return null;
      const now = ranked.value?.of === list.of ? ranked.value : null;
      const { fit, two } = fits.value?.of === list.of ? fits.value : { fit: list.fit, two: null };
      const clashes = clashing.value?.of === list.of ? clashing.value.before : null;
      return {
        ...list,
        fit,
        two,
        clash: clashes && clashes.length > 0,
        next: now?.next ?? [],
        outcomes: now?.outcomes ?? [],
      };
    }),
    stop: (): void => {
      stop();
      works?.stop();
    },
  };
}
export type PlannerModel = ReturnType<typeof makePlanner>;
