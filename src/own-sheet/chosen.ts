/**
 * Which transmission a page reasons about: one of the two training ones, or a sheet of one's own, whose table may first have
 * to be made.
 */
import { batch, computed, effect, signal, type ReadonlySignal } from '@preact/signals';
import { plantFromSheet, secondTraining, training } from '../engine/index.ts';
import type { Basis, PlannerModel } from '../planner/model.ts';
import { isSheetDeleted, type OwnSheet } from '../storage/sheets/own-sheet.ts';
import type { SheetStore } from '../storage/sheets/sheet-store.ts';
import type { TableStore } from '../storage/sheets/table-store.ts';
import type { Working } from '../ui/page-worker.ts';
import { fingerprintOf } from './fingerprint.ts';
import type { Answer, Ask } from './messages.ts';
import { readSheet } from './read-sheet.ts';

/** What cannot be reasoned about, and what may still be done about it. */
export type Standing =
  | { readonly kind: 'fetching' }
  | { readonly kind: 'ready' }
  /** `last`: what came of the last try. */
  | { readonly kind: 'noTable'; readonly last?: 'cancelled' | 'failed' | 'stopped' }
  | { readonly kind: 'making'; readonly share: number }
  /** The sheet has something wrong on it, is not on this device, or the table of the site did not come. */
  | { readonly kind: 'faulty' | 'gone' | 'missed' };

interface Needs {
  readonly which: ReadonlySignal<string>;
  readonly sheets: Pick<SheetStore, 'read' | 'watch'>;
  readonly tables: Pick<TableStore, 'read' | 'write'>;
  readonly start: (told: (answer: Answer) => void) => Working<Ask>;
  readonly code: string;
  /** The tables that the site brings; the one of the training transmission may be there already. */
  readonly site: {
    readonly training: () => string | Promise<string>;
    readonly second: () => Promise<string>;
  };
  readonly now?: () => number;
}

export function makeChosen({ which, sheets, tables, start, code, site, now = Date.now }: Needs) {
  const list = signal<readonly OwnSheet[] | null>(null);
  const standing = signal<Standing>({ kind: 'fetching' });
  /** The planner's table, as text. */
  const table = signal<string | null>(null);
  const basis = signal<Basis | null>(null);
  /** How often the table of the sheet was asked for, and what works on it. */
  let turn = 0;
  let works: Working<Ask> | undefined;

  const readList = async (): Promise<void> => {
    const { records } = await sheets.read(now());
    list.value = records
      .filter((sheet) => !isSheetDeleted(sheet))
      .sort((a, b) => (a.name.value < b.name.value ? -1 : 1));
  };

  const stand = (next: Standing, made: string | null = null): void => {
    batch(() => {
      table.value = made;
      standing.value = next;
    });
  };

  /** The table of a transmission that the site brings, or that was made on this device before. */
  function tableOf(fingerprint: string): string | Promise<string | undefined> {
    if (fingerprint === fingerprintOf(training, code)) return site.training();
    if (fingerprint === fingerprintOf(secondTraining, code)) return site.second();
    return tables.read(fingerprint);
  }

  async function resolve(id: string, all: readonly OwnSheet[] | null): Promise<void> {
    turn += 1;
    const mine = turn;
    works?.stop();
    works = undefined;
    if (id !== 'training' && id !== 'second') {
      if (all === null) {
        stand({ kind: 'fetching' });
        return;
      }
      const sheet = all.find((one) => one.id === id);
      const read = sheet && readSheet(sheet);
      if (sheet === undefined || read === undefined) {
        basis.value = null;
        stand({ kind: 'gone' });
        return;
      }
      const { yours, of } = read;
      basis.value = {
        kind: 'own',
        plant: read.whole === null ? training : plantFromSheet(read.whole),
        own: { name: sheet.name.value, yours, of },
      };
      if (read.whole === null) {
        stand({ kind: 'faulty' });
        return;
      }
    } else basis.value = { kind: id, plant: id === 'training' ? training : secondTraining };
    const { plant } = basis.value;
    const found = tableOf(fingerprintOf(plant, code));
    if (!(found instanceof Promise)) {
      stand({ kind: 'ready' }, found);
      return;
    }
    stand({ kind: 'fetching' });
    try {
      const made = await found;
      if (mine !== turn) return;
      if (made === undefined) stand({ kind: 'noTable' });
      else stand({ kind: 'ready' }, made);
    } catch {
      if (mine === turn) stand({ kind: 'missed' });
    }
  }

  /** A sheet as it stands: another tab's change to another sheet is none here. */
  const chosen = computed(() => {
    const id = which.value;
    const sheet = list.value?.find((one) => one.id === id);
    return JSON.stringify([id, list.value === null, sheet]);
  });
  const stop = chosen.subscribe(() => void resolve(which.peek(), list.peek()));
  void readList();
  const unwatch = sheets.watch(() => void readList());

  return {
    which,
    /** Null until it was read. */
    list,
    standing,
    table,
    basis,
    make: (): void => {
      const own = list.peek()?.find((one) => one.id === which.peek());
      const whole = own && readSheet(own).whole;
      if (!whole) return;
      turn += 1;
      const mine = turn;
      const fingerprint = fingerprintOf(plantFromSheet(whole), code);
      stand({ kind: 'making', share: 0 });
      works?.stop();
      works = start((answer) => {
        if (mine !== turn) return;
        switch (answer.kind) {
          case 'progress':
            standing.value = { kind: 'making', share: answer.share };
            return;
          case 'table':
            works?.stop();
            works = undefined;
            void tables.write(fingerprint, answer.text, now());
            stand({ kind: 'ready' }, answer.text);
            return;
          case 'failed':
          case 'stopped':
            works?.stop();
            works = undefined;
            stand({ kind: 'noTable', last: answer.kind });
        }
      });
      works.ask({ kind: 'table', sheet: whole });
    },
    /** What lies there as a table is none: one of one's own is made again, one of the site did not come whole. */
    unreadable: (text: string): void => {
      if (table.peek() === text)
        stand({ kind: basis.peek()?.kind === 'own' ? 'noTable' : 'missed' });
    },
    cancel: (): void => {
      turn += 1;
      works?.stop();
      works = undefined;
      stand({ kind: 'noTable', last: 'cancelled' });
    },
    end: (): void => {
      turn += 1;
      stop();
      unwatch();
      works?.stop();
    },
  };
}
export type Chosen = ReturnType<typeof makeChosen>;

/** Lets a planner on a page reason about what is chosen. */
export const follow = (
  {
    table,
    tableIs,
    basis,
    unreadable,
  }: Pick<PlannerModel, 'table' | 'tableIs' | 'basis' | 'unreadable'>,
  chosen: Pick<Chosen, 'table' | 'standing' | 'basis' | 'unreadable'>,
): (() => void) => {
  const stops = [
    effect(() => {
      const next = [chosen.table.value, chosen.standing.value.kind, chosen.basis.value] as const;
      batch(() => {
        [table.value, tableIs.value, basis.value] = next;
      });
    }),
    unreadable.subscribe(chosen.unreadable),
  ];
  return () => {
    for (const stop of stops) stop();
  };
};
