/** The state of the page "Keep and move". Device, clock and saving are handed in, so it runs in Node. */
import { computed, signal } from '@preact/signals';
import type { Bundle } from '../storage/bundle/bundle.ts';
import type { Chosen, Comparison } from '../storage/bundle/compare.ts';
import type { Device, Faults, Gathered } from '../storage/bundle/device.ts';
import type { Side } from '../storage/bundle/merge-parts.ts';
import type { Sides, Taken } from '../storage/bundle/take-in.ts';
import type { StoreStatus } from '../storage/connection.ts';
import type * as Stores from './stores.ts';

export interface Surroundings {
  /** What reads and writes; rejects if it cannot be had. */
  readonly load: () => Promise<typeof Stores>;
  readonly device: (stores: typeof Stores) => Device;
  readonly save: (name: string, text: string) => void;
  readonly now: () => number;
  /** After something has changed under the other scripts of the page. */
  readonly changed: () => void;
}
/** A file as a browser hands it over. */
export interface GivenFile {
  readonly name: string;
  readonly size: number;
  readonly text: () => Promise<string>;
}
export interface Opened {
  readonly name: string;
  readonly bundle: Bundle;
  readonly here: Bundle;
  readonly compared: Comparison;
  readonly toChoose: readonly Chosen[];
  readonly bringsNothing: boolean;
}
export type Refusal =
  | { readonly kind: 'refused'; readonly name: string; readonly sentence: string }
  | { readonly kind: 'notRead'; readonly name: string };
export interface Saved {
  readonly name: string;
  readonly bundle: Bundle;
  readonly faults: Faults;
}
export interface Done {
  readonly compared: Comparison;
  readonly faults: Faults;
  readonly undo: Taken['undo'];
}

/** Of a name that was typed; the rest of a file's name and its ending have room beside it everywhere. */
const MOST_OF_A_NAME = 40;

/**
 * Whose it is and of which day, as the device has it: practice-Alex-2026-11-29.json. Files of several learners lie in one
 * folder, so one without a name has the time: practice-2026-11-29-1432.json. No system forbids a letter, a digit or a hyphen.
 */
const fileName = (at: number, typed: string): string => {
  const local = new Date(at - new Date(at).getTimezoneOffset() * 60_000).toISOString();
  const day = local.slice(0, 10);
  const signs = Array.from(typed.normalize('NFC').replace(/[^\p{L}\p{M}\p{N}]+/gu, '-'));
  const name = signs.slice(0, MOST_OF_A_NAME).join('').replace(/^-|-$/g, '');
  return name === ''
    ? `practice-${day}-${local.slice(11, 16).replace(':', '')}.json`
    : `practice-${name}-${day}.json`;
};

export function keepModel(around: Surroundings) {
  const here = signal<Gathered | undefined>(undefined);
  /** What reads the device could not be loaded. */
  const stuck = signal(false);
  const saved = signal<Saved | 'tooLarge' | undefined>(undefined);
  const opened = signal<Opened | undefined>(undefined);
  const sides = signal<Sides | undefined>(undefined);
  const refusal = signal<Refusal | undefined>(undefined);
  const done = signal<Done | 'undone' | { readonly undoFaults: Faults } | undefined>(undefined);
  const deleting = signal<'no' | 'asked' | 'gone'>('no');
  const deleteStatus = signal<StoreStatus>('ok');
  const broughtBack = signal<Faults | undefined>(undefined);
  const busy = signal(false);
  let deleted: Bundle | undefined;
  let stores: typeof Stores | undefined;
  let last = Promise.resolve();
  let device: Device | undefined;

  async function ready() {
    try {
      stores ??= await around.load();
    } catch {
      stuck.value = true;
      return undefined;
    }
    stuck.value = false;
    device ??= around.device(stores);
    return { stores, device };
  }
  /** One thing after the other; each looks for itself whether it is still wanted. */
  function alone(work: (has: { stores: typeof Stores; device: Device }) => Promise<void>) {
    const turn = last.then(async () => {
      busy.value = true;
      try {
        const has = await ready();
        if (has !== undefined) await work(has);
      } finally {
        busy.value = false;
      }
    });
    last = turn.catch(() => undefined);
    return turn;
  }
  const look = (): Promise<void> =>
    alone(async (has) => {
      here.value = await has.stores.gather(has.device);
      const file = opened.peek();
      if (file !== undefined) open(has.stores, file.name, file.bundle);
    });

  function open({ compare, toChoose, bringsNothing }: typeof Stores, name: string, bundle: Bundle) {
    const now = here.peek()?.bundle;
    if (now === undefined) return;
    const compared = compare(now, bundle, around.now());
    opened.value = {
      ...{ name, bundle, here: now, compared },
      toChoose: toChoose(compared),
      bringsNothing: bringsNothing(compared),
    };
  }

  async function save(name: string): Promise<void> {
    await alone(async (has) => {
      const { bundle, faults, unreadable } = await has.stores.gather(has.device);
      here.value = { bundle, faults, unreadable };
      const typed = name.trim();
      const text = has.stores.writeBundle({ ...bundle, name: typed === '' ? null : typed });
      if (has.stores.tooLarge(text.length) !== undefined) {
        saved.value = 'tooLarge';
        return;
      }
      const called = fileName(around.now(), typed);
      around.save(called, text);
      saved.value = { name: called, bundle, faults };
    });
  }

  async function read(file: GivenFile, has: { stores: typeof Stores; device: Device }) {
    const large = has.stores.tooLarge(file.size);
    let text = '';
    if (large === undefined) {
      try {
        text = await file.text();
      } catch {
        refusal.value = { kind: 'notRead', name: file.name };
        return;
      }
    }
    const got =
      large === undefined ? has.stores.readBundle(text) : { ok: false as const, sentence: large };
    if (!got.ok) {
      refusal.value = { kind: 'refused', name: file.name, sentence: got.sentence };
      return;
    }
    here.value = await has.stores.gather(has.device);
    sides.value = has.stores.allHere;
    open(has.stores, file.name, got.bundle);
  }

  return {
    ...{ here, stuck, saved, opened, sides, refusal, done, deleting, deleteStatus, broughtBack },
    busy,
    look,
    save,
    isEmpty: computed(() => {
      const now = here.value;
      if (now === undefined) return false;
      const { answers, jobs, sheets, meetings, plan, progress, visits, columns } = now.bundle;
      const { rehearsal, rehearsed } = now.bundle;
      const lists = [answers, jobs, sheets, meetings];
      const parts = [plan, progress, visits, columns, rehearsal, rehearsed];
      return (
        now.unreadable === 0 &&
        lists.every((list) => list.length === 0) &&
        parts.every((part) => part === null)
      );
    }),
    /** A file was chosen: it is compared, and nothing else. */
    choose: async (file: GivenFile): Promise<void> => {
      opened.value = undefined;
      refusal.value = undefined;
      done.value = undefined;
      await alone((has) => read(file, has));
    },
    setSide: (part: Chosen, side: Side): void => {
      const now = sides.peek();
      if (now !== undefined) sides.value = { ...now, [part]: side };
    },
    leave: (): void => {
      opened.value = undefined;
    },
    take: (): Promise<void> =>
      alone(async (has) => {
        const file = opened.peek();
        const chosen = sides.peek();
        if (file === undefined || chosen === undefined) return;
        const { faults, undo } = await has.stores.takeIn(has.device, file.bundle, chosen);
        opened.value = undefined;
        done.value = { compared: file.compared, faults, undo };
        here.value = await has.stores.gather(has.device);
        around.changed();
      }),
    undo: (): Promise<void> =>
      alone(async (has) => {
        const now = done.peek();
        if (now === undefined || now === 'undone' || !('undo' in now)) return;
        const faults = await now.undo();
        done.value = Object.keys(faults).length === 0 ? 'undone' : { undoFaults: faults };
        here.value = await has.stores.gather(has.device);
        around.changed();
      }),
    askDelete: (): void => {
      deleting.value = 'asked';
      broughtBack.value = undefined;
    },
    keepAll: (): void => {
      deleting.value = 'no';
    },
    deleteAll: (): Promise<void> =>
      alone(async (has) => {
        if (deleting.peek() !== 'asked') return;
        deleted = (await has.stores.gather(has.device)).bundle;
        await has.stores.closeDevice(has.device);
        device = undefined;
        deleteStatus.value = await has.stores.deleteAll();
        here.value = {
          bundle: has.stores.nothingKept(around.now()),
          faults: {},
          unreadable: 0,
        };
        opened.value = undefined;
        done.value = undefined;
        saved.value = undefined;
        deleting.value = 'gone';
        around.changed();
      }),
    /** What was deleted a moment ago, from what this page still has of it. */
    bringBack: (): Promise<void> =>
      alone(async (has) => {
        const before = deleted;
        if (before === undefined) return;
        const { faults } = await has.stores.takeIn(has.device, before, has.stores.allFile);
        broughtBack.value = faults;
        deleting.value = 'no';
        deleted = undefined;
        here.value = await has.stores.gather(has.device);
        around.changed();
      }),
  };
}
export type KeepModel = ReturnType<typeof keepModel>;
